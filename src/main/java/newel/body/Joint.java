package newel.body;

/** A joint whose static net moment is computed, in body weight times stature. */
public enum Joint {
    SHOULDER,
    ELBOW,
    LOW_BACK,
    HIP,
    KNEE,
    ANKLE;

    /** A left and a right one. */
    public boolean sided() {
        return this != LOW_BACK;
    }
}
