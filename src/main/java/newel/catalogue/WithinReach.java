package newel.catalogue;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import newel.body.ArmAt;
import newel.body.Hand;
import newel.body.Posed;
import newel.body.Side;

/** Hands reach what they hold and feet where they stand. */
final class WithinReach implements BodyRule {
    /** A palm or a foot may miss its point by this much, statures: 2 cm, less than the pad of a hand. */
    private static final double NEAR = 0.012;
    /** A fingertip this near the ear touches the head behind it, statures. */
    private static final double AT_THE_HEAD = 0.10;

    @Override
    public Stream<Flaw> flaws(Movement movement, Map<String, Doing> doings) {
        return doings.values().stream()
                .flatMap(doing -> Arrays.stream(Side.values()).flatMap(side -> flaws(doing, side)));
    }

    private static Stream<Flaw> flaws(Doing doing, Side side) {
        String name = side.name().toLowerCase(Locale.ROOT);
        return Stream.of(
                        doing.firstKey(
                                posed -> posed.arm(side).missed() > NEAR,
                                posed -> missed(
                                        name + " hand misses what it holds",
                                        posed.arm(side).missed())),
                        doing.firstKey(
                                posed -> posed.leg(side).missed() > NEAR,
                                posed -> missed(
                                        name + " foot misses its place",
                                        posed.leg(side).missed())),
                        doing.firstKey(
                                posed -> posed.contacts().hand(side).hold() == Hand.Hold.HEAD
                                        && fromHead(posed, side) > AT_THE_HEAD,
                                posed -> missed(name + " hand misses the head", fromHead(posed, side))))
                .flatMap(flaws -> flaws);
    }

    private static double fromHead(Posed posed, Side side) {
        ArmAt arm = posed.arm(side);
        return arm.fingertip().distance(posed.trunk().head());
    }

    private static String missed(String what, double by) {
        return String.format(Locale.ROOT, "the %s by %.3f H", what, by);
    }
}
