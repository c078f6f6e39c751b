package newel.catalogue;

/** A place that a mobility movement or a stretch keeps moving. */
public enum Region {
    SHOULDER,
    SHOULDER_BLADE,
    ELBOW,
    WRIST,
    NECK,
    UPPER_BACK,
    LOW_BACK,
    HIP,
    KNEE,
    ANKLE,
    RIBS
}
