package newel.body;

/**
 * Lengths of the drawn and computed body in fractions of stature. Limbs and heights: Drillis and Contini 1966 as in
 * Winter 2009, fig. 4.1; joint-centre widths and the lumbosacral joint: Rajagopal et al. 2016. The split of the trunk
 * above the lumbosacral joint and the head's points are design choices that keep the whole at one stature.
 */
public final class Build {
    public static final double ANKLE_HEIGHT = 0.039;
    public static final double SHANK = 0.246;
    public static final double THIGH = 0.245;
    public static final double HALF_HIPS = 0.0455;
    public static final double HIPS_TO_LUMBOSACRAL = 0.094;
    public static final double LUMBOSACRAL_TO_WAIST = 0.085;
    public static final double WAIST_TO_SHOULDERS = 0.109;
    public static final double WAIST_TO_C7 = 0.151;
    public static final double HALF_SHOULDERS = 0.100;
    /** Inner end of the collar bone, about which the shoulder blade is taken to lift and reach. */
    public static final double COLLAR_BONE = 0.087;

    public static final double UPPER_ARM = 0.186;
    public static final double FOREARM = 0.146;
    public static final double HAND = 0.108;
    /** Middle of the palm beyond the wrist. */
    public static final double HAND_POINT = 0.05;

    public static final double HEEL_BEHIND = 0.030;
    public static final double BALL_AHEAD = 0.076;
    public static final double TOE_AHEAD = 0.122;
    public static final double HALF_FOOT = 0.0275;

    static final Vec SKULL_BASE = new Vec(0.012, 0.05, 0);
    static final Vec HEAD_CENTRE = new Vec(0.008, 0.034, 0);
    static final Vec EAR = new Vec(0, 0.022, 0);
    static final Vec CROWN = new Vec(0.003, 0.09, 0);
    static final Vec NOSE = new Vec(0.073, 0.022, 0);
    static final Vec CHIN = new Vec(0.050, -0.022, 0);

    private Build() {}
}
