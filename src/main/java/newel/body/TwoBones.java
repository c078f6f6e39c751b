package newel.body;

/**
 * Two bones and a hinge, brought from their root to a target. The bend lies in the plane nearest to a wished hinge axis
 * and stays within the joint's range; a target out of reach is approached as far as the range allows.
 */
record TwoBones(double upper, double lower, double leastBend, double mostBend) {
    /** Arm to the wrist; elbow 0 to 150 degrees (AAOS). */
    static final TwoBones ARM = new TwoBones(Build.UPPER_ARM, Build.FOREARM, 0, 150);

    /** Arm to the middle of the palm of a straight wrist. */
    static final TwoBones ARM_AND_PALM = new TwoBones(Build.UPPER_ARM, Build.FOREARM + Build.HAND_POINT, 0, 150);

    /** Leg to the ankle; knee 0 to 150 degrees (drawing cap, design choice after AAOS 135 and passive means to 149). */
    static final TwoBones LEG = new TwoBones(Build.THIGH, Build.SHANK, 0, 150);

    /**
     * @param bend degrees between the bones, 0 straight
     * @param missed how far the end stays from the target, statures
     */
    record Reached(Vec middle, Vec end, Rot upperTurn, Rot lowerTurn, double bend, double missed) {}

    /** @param forward whether the middle joint lies ahead of the line (a knee) or behind it (an elbow) */
    Reached reach(Vec root, Vec target, Vec hinge, boolean forward) {
        double distance = Math.max(span(mostBend), Math.min(span(leastBend), root.distance(target)));
        Vec line = target.minus(root).unit();
        Vec axis = hinge.minus(line.times(hinge.dot(line))).unit();
        Vec aside = axis.cross(line).times(forward ? 1 : -1);
        double along = (distance * distance + upper * upper - lower * lower) / (2 * distance);
        double off = Math.sqrt(Math.max(0, upper * upper - along * along));
        Vec middle = root.plus(line.times(along)).plus(aside.times(off));
        Vec end = root.plus(line.times(distance));
        double bend = Math.toDegrees(Math.acos(Math.max(
                -1, Math.min(1, (distance * distance - upper * upper - lower * lower) / (2 * upper * lower)))));
        return new Reached(
                middle,
                end,
                Rot.bone(middle.minus(root), axis),
                Rot.bone(end.minus(middle), axis),
                bend,
                end.distance(target));
    }

    private double span(double bend) {
        return Math.sqrt(upper * upper + lower * lower + 2 * upper * lower * Math.cos(Math.toRadians(bend)));
    }
}
