package newel.body;

/**
 * Heights of things in statures, settled once for all pictures. Seat: 43 cm, the chair of the 30-second stand test, at
 * 1.60 m. Counter 91 cm at 1.62 m; a step of 15 cm and a low one of 10 cm at 1.60 m. The rest are design choices.
 */
public final class Furniture {
    public static final double SEAT = 0.27;
    public static final double SEAT_DEPTH = 0.27;
    public static final double SEAT_HALF_WIDTH = 0.14;
    public static final double CHAIR_BACK = 0.54;
    public static final double ARMREST = 0.41;
    public static final double COUNTER = 0.56;
    public static final double BED = 0.28;
    public static final double LOW_STEP = 0.0625;
    public static final double STEP = 0.094;

    /** Hip centre above what the person sits on. */
    public static final double SITTING = 0.045;
    /** Hip centre above the bed, lying on the back and on the side. */
    public static final double LYING = 0.05;

    public static final double LYING_ON_SIDE = 0.085;
    /** Knee centre above what it kneels on. */
    public static final double KNEELING = 0.04;

    private Furniture() {}
}
