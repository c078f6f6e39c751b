package newel.limit;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import newel.body.Motion;
import newel.body.Side;
import newel.catalogue.Kit;
import newel.catalogue.Position;
import newel.catalogue.Support;
import newel.catalogue.Trait;
import newel.catalogue.Variant;

/** Says in a sentence how what is asked breaks one limit, or nothing when it keeps it. */
final class Breaking {
    /** Angles are rounded when they are shown; half a degree over is not over. */
    private static final double DEGREES = 0.5;

    private static final double LOAD = 1e-6;
    /** A hand that carries less than this rests lightly (design choice, twice a resting hand). */
    private static final double LIGHT_TOUCH = 0.06;
    /** Stepping and walking need this much clear floor, metres (design choice). */
    static final double STEPPING_METRES = 2;

    static Optional<String> how(Limit limit, Asked asked) {
        return switch (limit) {
            case Limit.Angle a -> angle(a, asked);
            case Limit.Load l -> load(l, asked);
            case Limit.Positions p -> positions(p.allowed(), asked);
            case Limit.SupportNeeded s -> support(s.least(), asked);
            case Limit.Time t -> time(t, asked);
            case Limit.GripAtMost g -> grip(g, asked);
            case Limit.NoWristWeight w ->
                when(
                        leansOnAHand(w, asked) || asked.variant().traits().contains(Trait.HAND_PRESS),
                        "Puts weight through the hand and wrist");
            case Limit.HeldAtMost h ->
                when(
                        asked.heldBodyMasses() > h.maxBodyMasses() + LOAD && touches(asked.holdingHands(), h.side()),
                        "Holds a weight that is too much for now");
            case Limit.CoordinationAtMost c ->
                when(
                        asked.variant().coordination() > c.most(),
                        () -> "Asks for coordination %d of 3; the limit is %d"
                                .formatted(asked.variant().coordination(), c.most()));
            case Limit.EffortAtMost e ->
                when(
                        asked.variant().effort() > e.most(),
                        () -> "Takes effort %d of 10; the limit is %d"
                                .formatted(asked.variant().effort(), e.most()));
            case Limit.Avoid a -> Avoiding.how(a.what(), asked);
            case Limit.Withheld w -> Optional.empty();
            case Limit.KitAtHome k -> kit(k.kit(), asked.variant());
            case Limit.Ceiling c -> ceiling(c, asked);
            case Limit.ClearSpace c ->
                when(
                        asked.positions().contains(Position.STEPPING) && c.metres() < STEPPING_METRES,
                        () -> "Needs 2 metres of clear floor; there are %.1f".formatted(c.metres()));
        };
    }

    private static boolean leansOnAHand(Limit.NoWristWeight limit, Asked asked) {
        return asked.body().handShare() > LIGHT_TOUCH && touches(asked.supportedHands(), limit.side());
    }

    private static Optional<String> angle(Limit.Angle limit, Asked asked) {
        Motion motion = limit.motion();
        Side[] over = Arrays.stream(Side.values())
                .filter(limit.side()::covers)
                .filter(side -> asked.body().angle(motion, side) > limit.maxDegrees() + DEGREES)
                .toArray(Side[]::new);
        if (over.length == 0) {
            return Optional.empty();
        }
        double most = Arrays.stream(over)
                .mapToDouble(side -> asked.body().angle(motion, side))
                .max()
                .orElseThrow();
        return Optional.of(Wording.angle(motion, Wording.Who.of(over), most, limit.maxDegrees()));
    }

    private static Optional<String> load(Limit.Load limit, Asked asked) {
        double most = Arrays.stream(Side.values())
                .filter(limit.side()::covers)
                .mapToDouble(side -> asked.body().load(limit.joint(), side))
                .max()
                .orElse(0);
        return when(
                most > limit.maxBwH() + LOAD,
                () -> "Loads the %s more than it may be (%.3f of body weight times height; the limit is %.3f)"
                        .formatted(Wording.plain(limit.joint()), most, limit.maxBwH()));
    }

    private static Optional<String> positions(Set<Position> allowed, Asked asked) {
        return when(
                !allowed.containsAll(asked.positions()),
                () -> "Is done "
                        + Stances.doing(asked.positions().stream().filter(position -> !allowed.contains(position))));
    }

    private static Optional<String> support(Support least, Asked asked) {
        return when(
                asked.stands() && asked.support().compareTo(least) > 0,
                () -> "Stands with %s; %s needed".formatted(Stances.holding(asked.support()), Stances.needed(least)));
    }

    private static Optional<String> time(Limit.Time limit, Asked asked) {
        int seconds = switch (limit.what()) {
            case STANDING -> asked.standingSeconds();
            case ARMS_HIGH -> asked.armsHighSeconds();
            case HOLD -> asked.holdSeconds();
        };
        String what = switch (limit.what()) {
            case STANDING -> "Stands for";
            case ARMS_HIGH -> "Keeps the arms at or above the shoulders for";
            case HOLD -> "Holds against effort for";
        };
        return when(
                seconds > limit.maxSeconds(),
                () -> "%s %d seconds; the limit is %d".formatted(what, seconds, limit.maxSeconds()));
    }

    private static Optional<String> grip(Limit.GripAtMost limit, Asked asked) {
        return when(
                asked.grip().compareTo(limit.most()) > 0 && touches(asked.holdingHands(), limit.side()),
                () -> "Needs a %s grip; the limit is %s"
                        .formatted(Wording.plain(asked.grip()), Wording.plain(limit.most())));
    }

    /** Where the poses do not tell which hand, either may be meant. */
    private static boolean touches(Set<Side> hands, Sided side) {
        return hands.isEmpty() || hands.stream().anyMatch(side::covers);
    }

    private static Optional<String> kit(Set<Kit> home, Variant variant) {
        if (home.containsAll(variant.kit())) {
            return Optional.empty();
        }
        return Optional.of(Wording.needs(variant.kit().stream()
                .filter(kit -> !home.contains(kit))
                .sorted()
                .toList()));
    }

    private static Optional<String> ceiling(Limit.Ceiling limit, Asked asked) {
        double fingertips = asked.body().fingertips();
        return when(
                fingertips > limit.maxStatures(),
                () -> "Reaches %d cm high; the ceiling is at %d cm"
                        .formatted(Math.round(fingertips * limit.statureCm()), limit.ceilingCm()));
    }

    static Optional<String> when(boolean broken, String sentence) {
        return broken ? Optional.of(sentence) : Optional.empty();
    }

    /** The sentence is made only where it is needed: most limits are kept. */
    private static Optional<String> when(boolean broken, Supplier<String> sentence) {
        return broken ? Optional.of(sentence.get()) : Optional.empty();
    }

    private Breaking() {}
}
