package newel.catalogue;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import newel.body.Joint;
import newel.body.Motion;
import newel.body.Side;

/**
 * A link tells the truth: on the axis that it names the easier variant asks strictly less, and whatever it asks more of is
 * said. What poses cannot show (a band's pull, the force of a squeeze) is left to the effort number.
 */
final class TrueLinks implements BodyRule {
    /** A hand or trunk goes this much less far, statures: 1.6 cm at 1.60 m. */
    private static final double SHORTER = 0.01;
    /** A static load that is smaller by less than this part is not smaller. */
    private static final double LOAD_PART = 0.95;
    /** A base of support must be wider by this, statures: half a centimetre. */
    private static final double WIDER = 0.003;
    /** Of two bases as wide, one is larger by this part. */
    private static final double LARGER = 1.2;

    @Override
    public Stream<Flaw> flaws(Movement movement, Map<String, Doing> doings) {
        return doings.values().stream()
                .flatMap(doing -> doing.variant().easier().stream()
                        .filter(link -> doings.containsKey(link.easier()))
                        .flatMap(link -> flaws(movement, link, doing, doings.get(link.easier()))));
    }

    private static Stream<Flaw> flaws(Movement movement, Link link, Doing harder, Doing easier) {
        Stream.Builder<Flaw> flaws = Stream.builder();
        String to = link.axis().name().toLowerCase(Locale.ROOT) + " to '" + link.easier() + "' ";
        if (!less(movement, link.axis(), harder, easier)) {
            flaws.add(Rule.flaw(harder.variant(), to + "does not ask less"));
        }
        if (easier.variant().effort() > harder.variant().effort()) {
            flaws.add(Rule.flaw(harder.variant(), to + "asks more effort"));
        }
        Set<String> rises = Rises.between(harder, easier);
        if (!rises.equals(new TreeSet<>(link.rises()))) {
            flaws.add(Rule.flaw(harder.variant(), to + "rises " + rises + ", but says " + link.rises()));
        }
        return flaws.build();
    }

    private static boolean less(Movement movement, Axis axis, Doing harder, Doing easier) {
        Variant from = harder.variant();
        Variant to = easier.variant();
        return switch (axis) {
            case POSITION -> to.position().compareTo(from.position()) < 0;
            case SUPPORT -> to.support().compareTo(from.support()) < 0;
            case STANCE -> wider(harder, easier);
            case RANGE -> smallerAngle(harder, easier) || easier.travel() + SHORTER < harder.travel();
            case LEVER -> smallerLoad(harder, easier);
            case LOAD -> smallerLoad(harder, easier) || lessHeld(harder, easier);
            case SPEED -> to.holdSeconds() < from.holdSeconds() || calmer(movement, from, to);
            case COORDINATION -> to.coordination() < from.coordination();
        };
    }

    /** A wider base, or one as wide and larger. */
    private static boolean wider(Doing harder, Doing easier) {
        double before = harder.demands().baseWidth();
        double after = easier.demands().baseWidth();
        return after > before + WIDER || after > before - WIDER && easier.baseArea() > harder.baseArea() * LARGER;
    }

    private static boolean smallerAngle(Doing harder, Doing easier) {
        return Arrays.stream(Motion.values())
                .anyMatch(motion -> Arrays.stream(Side.values())
                        .anyMatch(side -> easier.demands().angle(motion, side) + Threshold.step(motion)
                                <= harder.demands().angle(motion, side)));
    }

    private static boolean smallerLoad(Doing harder, Doing easier) {
        return Arrays.stream(Joint.values()).anyMatch(joint -> {
            double before = Rises.most(joint, harder.demands());
            double after = Rises.most(joint, easier.demands());
            return after < before * LOAD_PART && after < before - Threshold.step(joint) / 2;
        });
    }

    private static boolean lessHeld(Doing harder, Doing easier) {
        Variant from = harder.variant();
        Variant to = easier.variant();
        return Rises.heldMass(to) < Rises.heldMass(from)
                || easier.demands().handShare() < harder.demands().handShare()
                || from.kit().contains(Kit.BAND) && !to.kit().contains(Kit.BAND);
    }

    /** Pulse work is easier when slower; other work is easier when it is sooner over. */
    private static boolean calmer(Movement movement, Variant from, Variant to) {
        double before = from.tempo().seconds();
        double after = to.tempo().seconds();
        return movement.kind() == Kind.PULSE ? after > before : after < before;
    }
}
