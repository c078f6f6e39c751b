package newel.body;

import java.util.Map;

/**
 * What a path asks of a body, peaks over the whole path.
 *
 * @param angles degrees, one peak a side; never negative (a motion that does not occur is 0)
 * @param loads static net moments, body weight times stature
 * @param margin smallest signed distance of the centre of mass inside the base of support, statures; seated and lying
 *     poses count what they sit or lie on
 * @param fingertips greatest height of a fingertip above the floor, statures
 * @param headBelowHeart whether the head's centre comes below the heart anywhere
 * @param armsHigh share of the path with an elbow at or above shoulder height, 0 to 1
 * @param handShare greatest share of the body weight on one hand
 * @param baseWidth smallest width of the base of support, statures
 */
public record Demands(
        Map<Motion, Peak> angles,
        Map<Joint, Peak> loads,
        double margin,
        double fingertips,
        boolean headBelowHeart,
        double armsHigh,
        double handShare,
        double baseWidth) {

    public double angle(Motion motion, Side side) {
        return angles.getOrDefault(motion, Peak.ZERO).on(side);
    }

    public double load(Joint joint, Side side) {
        return loads.getOrDefault(joint, Peak.ZERO).on(side);
    }
}
