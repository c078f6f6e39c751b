package newel.body;

/**
 * One arm in degrees. Upper arm against the thorax: plane 0 out to the side, 90 forward, 130 across, −90 behind; raise 0
 * hanging to 180 overhead; turn outward positive, 0 when swung up without roll. Elbow bend, supination (0 thumb up with
 * the elbow bent), wrist extension positive. Shoulder blade: lift up and forward positive, about the inner end of the
 * collar bone.
 */
public record Arm(
        double plane,
        double raise,
        double turn,
        double elbow,
        double supination,
        double wrist,
        double lift,
        double forward) {
    public static final Arm HANGING = new Arm(0, 0, 0, 0, 0, 0, 0, 0);

    public Arm withUpper(double newPlane, double newRaise, double newTurn, double newElbow) {
        return new Arm(newPlane, newRaise, newTurn, newElbow, supination, wrist, lift, forward);
    }
}
