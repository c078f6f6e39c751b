package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import newel.body.Foot;
import newel.body.Ground;
import newel.body.KeyPose;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Solver;
import newel.body.Vec;

/** Which key poses tell a movement. */
final class Telling {
    /** Poses no further apart than this are one picture, statures. */
    private static final double SAME_POSE = 0.006;
    /** The same pose on the other side, statures: sides are written with some play. */
    private static final double OTHER_SIDE = 0.04;

    /** Feet further apart than this have made a step, statures. */
    private static final double STRIDE = 0.15;

    /**
     * A last pose that mirrors the one before, or returns to the first, is left out, and a hold is one pose; of more than
     * three the first, the second, the last, and what {@link #standsAnew stands anew} stay. The way down to the floor is told stage by stage.
     */
    static List<KeyPose> told(List<KeyPose> keyPoses) {
        List<KeyPose> told = new ArrayList<>(keyPoses);
        while (told.size() > 1 && tellsNothing(told)) {
            told.removeLast();
        }
        return told.size() > 3 && !inStages(told) ? few(told) : told;
    }

    private static List<KeyPose> few(List<KeyPose> told) {
        int last = told.size() - 1;
        return IntStream.rangeClosed(0, last)
                .filter(i -> i < 2 || i == last || standsAnew(told, i))
                .mapToObj(told::get)
                .toList();
    }

    /** Its feet stand a stride apart, on other places than before and after, as astride of what is stepped over. */
    private static boolean standsAnew(List<KeyPose> told, int i) {
        List<Vec> here = standing(told.get(i));
        return here.size() == 2
                && here.getFirst().distance(here.getLast()) > STRIDE
                && !here.equals(standing(told.get(i - 1)))
                && !here.equals(standing(told.get(i + 1)));
    }

    private static List<Vec> standing(KeyPose key) {
        return Stream.of(Side.values())
                .map(key.contacts()::foot)
                .filter(Foot::carries)
                .map(foot -> new Vec(foot.x(), foot.height(), foot.z()))
                .toList();
    }

    /** The last pose is the one before it with the sides changed over. */
    static boolean endsMirrored(List<KeyPose> keyPoses) {
        int last = keyPoses.size() - 1;
        return last > 1 && mirrors(keyPoses.get(last - 1), keyPoses.get(last));
    }

    private static boolean inStages(List<KeyPose> told) {
        return told.stream().anyMatch(key -> key.contacts().ground() == Ground.KNEES);
    }

    private static boolean tellsNothing(List<KeyPose> told) {
        return same(told.getFirst(), told.getLast()) || endsMirrored(told);
    }

    private static boolean same(KeyPose a, KeyPose b) {
        return apart(Solver.pose(a), Solver.pose(b), 1) < SAME_POSE;
    }

    private static boolean mirrors(KeyPose a, KeyPose b) {
        return apart(Solver.pose(a), Solver.pose(b), -1) < OTHER_SIDE;
    }

    /** The furthest that a hand, a foot or the face is from its place in the other pose, or in its mirror image. */
    private static double apart(Posed a, Posed b, int sign) {
        double most = apart(a.trunk().nose(), b.trunk().nose(), sign);
        for (Side side : Side.values()) {
            Side there = sign > 0 ? side : side.other();
            most = Math.max(most, apart(a.arm(side).palm(), b.arm(there).palm(), sign));
            most = Math.max(most, apart(a.leg(side).ankle(), b.leg(there).ankle(), sign));
            most = Math.max(most, apart(a.leg(side).ball(), b.leg(there).ball(), sign));
        }
        return most;
    }

    private static double apart(Vec a, Vec b, int sign) {
        return new Vec(a.x(), a.y(), sign * a.z()).distance(b);
    }

    private Telling() {}
}
