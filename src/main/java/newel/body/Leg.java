package newel.body;

/**
 * One leg in degrees. Hip against the pelvis: flexion, abduction, outward turn positive. Knee bend, ankle dorsiflexion
 * positive; foot turn is toes outward, foot tip is the sole turned inward.
 */
public record Leg(double flex, double abd, double out, double knee, double ankle, double footTurn, double footTip) {
    public static final Leg STRAIGHT = new Leg(0, 0, 0, 0, 0, 0, 0);
}
