package newel.catalogue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import newel.body.Joint;
import newel.body.Motion;
import newel.body.Side;

/**
 * What falls on a link's axis from the harder variant to the easier one, computed from both; nothing when the easier one
 * asks no less there. What poses cannot show (a band's pull, the force of a squeeze) is left to the effort number.
 */
final class Falls {
    /** A hand or trunk goes this much less far, statures: 1.6 cm at 1.60 m. */
    private static final double SHORTER = 0.01;
    /** A static load that is smaller by less than this part is not smaller. */
    private static final double LOAD_PART = 0.95;
    /** A base of support must be wider by this, statures: half a centimetre. */
    private static final double WIDER = 0.003;
    /** Of two bases as wide, one is larger by this part. */
    private static final double LARGER = 1.2;

    private final Movement movement;
    private final Doing harder;
    private final Doing easier;

    Falls(Movement movement, Doing harder, Doing easier) {
        this.movement = movement;
        this.harder = harder;
        this.easier = easier;
    }

    Optional<Fall> on(Axis axis) {
        return switch (axis) {
            case POSITION -> lower("position", Variant::position);
            case SUPPORT -> lower("support", Variant::support);
            case STANCE -> stance();
            case RANGE -> first(angle(), travel());
            case LEVER -> moment();
            case LOAD -> first(moment(), held(), onHands(), band());
            case SPEED -> first(hold(), pace());
            case COORDINATION -> number("coordination", Variant::coordination);
        };
    }

    @SafeVarargs
    private static Optional<Fall> first(Optional<Fall>... falls) {
        return Stream.of(falls).flatMap(Optional::stream).findFirst();
    }

    private <E extends Enum<E>> Optional<Fall> lower(String name, Function<Variant, E> what) {
        E before = what.apply(harder.variant());
        E after = what.apply(easier.variant());
        return when(after.compareTo(before) < 0, name, Measure.word(before), Measure.word(after));
    }

    private Optional<Fall> number(String name, Function<Variant, Integer> what) {
        int before = what.apply(harder.variant());
        int after = what.apply(easier.variant());
        return when(after < before, name, "" + before, "" + after);
    }

    /** A wider base, or one as wide and larger. */
    private Optional<Fall> stance() {
        double before = harder.demands().baseWidth();
        double after = easier.demands().baseWidth();
        if (after > before + WIDER) {
            return fall("base-width", Measure.hundredths(before), Measure.hundredths(after));
        }
        boolean larger = after > before - WIDER && easier.baseArea() > harder.baseArea() * LARGER;
        return when(
                larger,
                "base-area",
                Measure.hundredths(100 * harder.baseArea()),
                Measure.hundredths(100 * easier.baseArea()));
    }

    /** The angle that falls most. */
    private Optional<Fall> angle() {
        return Arrays.stream(Motion.values())
                .flatMap(motion -> Arrays.stream(Side.values()).map(side -> new Angle(motion, side)))
                .filter(angle -> angle.drop() >= Threshold.step(angle.motion))
                .max(Comparator.comparingDouble(Angle::drop))
                .map(angle -> new Fall(
                        Measure.word(angle.motion) + " " + Measure.word(angle.side),
                        Measure.degrees(angle.before()),
                        Measure.degrees(angle.after())));
    }

    private final class Angle {
        private final Motion motion;
        private final Side side;

        Angle(Motion motion, Side side) {
            this.motion = motion;
            this.side = side;
        }

        double before() {
            return harder.demands().angle(motion, side);
        }

        double after() {
            return easier.demands().angle(motion, side);
        }

        double drop() {
            return before() - after();
        }
    }

    private Optional<Fall> travel() {
        double before = harder.travel();
        double after = easier.travel();
        return when(after + SHORTER < before, "travel", Measure.hundredths(before), Measure.hundredths(after));
    }

    /** The joint whose load falls by the largest part. */
    private Optional<Fall> moment() {
        return Arrays.stream(Joint.values())
                .filter(joint -> part(joint) < LOAD_PART
                        && load(joint, easier) < load(joint, harder) - Threshold.step(joint) / 2)
                .min(Comparator.comparingDouble(this::part))
                .map(joint -> new Fall(
                        Measure.word(joint), Measure.load(load(joint, harder)), Measure.load(load(joint, easier))));
    }

    private double part(Joint joint) {
        return load(joint, easier) / load(joint, harder);
    }

    private static double load(Joint joint, Doing doing) {
        return Rises.most(joint, doing.demands());
    }

    private Optional<Fall> held() {
        double before = Rises.heldMass(harder.variant());
        double after = Rises.heldMass(easier.variant());
        return when(after < before, "held", Measure.hundredths(before), Measure.hundredths(after));
    }

    private Optional<Fall> onHands() {
        double before = harder.demands().handShare();
        double after = easier.demands().handShare();
        return when(after < before, "hands", Measure.hundredths(before), Measure.hundredths(after));
    }

    private Optional<Fall> band() {
        boolean before = harder.variant().kit().contains(Kit.BAND);
        boolean after = easier.variant().kit().contains(Kit.BAND);
        return when(before && !after, "band", "yes", "no");
    }

    private Optional<Fall> hold() {
        int before = harder.variant().holdSeconds();
        int after = easier.variant().holdSeconds();
        return when(after < before, "hold", before + " s", after + " s");
    }

    /** Pulse work is easier when slower; other work is easier when it is sooner over. */
    private Optional<Fall> pace() {
        double before = harder.variant().tempo().seconds();
        double after = easier.variant().tempo().seconds();
        boolean calmer = movement.kind() == Kind.PULSE ? after > before : after < before;
        return when(calmer, "seconds", seconds(before), seconds(after));
    }

    private static String seconds(double seconds) {
        return seconds + " s";
    }

    private static Optional<Fall> when(boolean falls, String demand, String before, String after) {
        return falls ? fall(demand, before, after) : Optional.empty();
    }

    private static Optional<Fall> fall(String demand, String before, String after) {
        return Optional.of(new Fall(demand, before, after));
    }
}
