package newel.body;

/** Where a leg is: points in statures, rotations in the world. Missed is how far the foot stays from its place. */
public record LegAt(Vec hip, Vec knee, Vec ankle, Rot thigh, Rot shank, Rot foot, double missed) {
    public Vec heel() {
        return ankle.plus(foot.of(new Vec(-Build.HEEL_BEHIND, -Build.ANKLE_HEIGHT, 0)));
    }

    public Vec ball() {
        return ankle.plus(foot.of(new Vec(Build.BALL_AHEAD, -Build.ANKLE_HEIGHT, 0)));
    }

    /** Toe tip; the toes stay flat on the ground when the heel is up. */
    public Vec toe(Foot placed) {
        double toes = Build.TOE_AHEAD - Build.BALL_AHEAD;
        if (placed.placement() == Foot.Placement.BALL
                || placed.placement() == Foot.Placement.TOUCH && placed.pitch() < 0) {
            Vec ahead = new Vec(foot.x().x(), 0, foot.x().z()).unit();
            return ball().plus(ahead.times(toes));
        }
        return ball().plus(foot.x().times(toes));
    }
}
