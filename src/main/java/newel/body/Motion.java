package newel.body;

/** A direction of motion at a joint whose peak, in degrees, a limit may cap. Sided ones have a left and a right peak. */
public enum Motion {
    SHOULDER_RAISE("raises", "arm"),
    /** Raise while the arm points more than 45 degrees out to the side. */
    SHOULDER_ABDUCTION("lifts out to the side", "arm"),
    /** Angle of the upper arm behind the trunk. */
    SHOULDER_EXTENSION("reaches behind with", "arm"),
    SHOULDER_OUT("turns out", "arm"),
    SHOULDER_IN("turns in", "arm"),
    ELBOW_BEND("bends", "elbow"),
    WRIST_BACK("bends back", "wrist"),
    HIP_FLEXION("bends", "hip"),
    HIP_EXTENSION("takes back", "hip"),
    HIP_ABDUCTION("takes out to the side", "hip"),
    HIP_ADDUCTION("takes across", "hip"),
    HIP_OUT("turns out", "hip"),
    HIP_IN("turns in", "hip"),
    KNEE_BEND("bends", "knee"),
    /** Knee bend while that leg carries weight. */
    KNEE_BEND_LOADED("bends under weight", "knee"),
    ANKLE_UP("pulls up", "ankle"),
    ANKLE_DOWN("points", "ankle"),
    LOW_BACK_FLEXION("rounds", "low back"),
    LOW_BACK_EXTENSION("arches", "low back"),
    LOW_BACK_SIDE("bends to the side", "low back"),
    LOW_BACK_TURN("turns", "low back"),
    UPPER_BACK_FLEXION("rounds", "upper back"),
    UPPER_BACK_EXTENSION("arches", "upper back"),
    UPPER_BACK_SIDE("bends to the side", "upper back"),
    UPPER_BACK_TURN("turns", "upper back"),
    NECK_FLEXION("bends forward", "neck"),
    NECK_EXTENSION("bends back", "neck"),
    NECK_SIDE("bends to the side", "neck"),
    NECK_TURN("turns", "neck");

    private final String verb;
    private final String part;

    Motion(String verb, String part) {
        this.verb = verb;
        this.part = part;
    }

    public String verb() {
        return verb;
    }

    /** The joint or part in plain words. */
    public String part() {
        return part;
    }

    /** Left and right are directions of the motion, not sides of the body. */
    public boolean directed() {
        return switch (this) {
            case LOW_BACK_SIDE, LOW_BACK_TURN, UPPER_BACK_SIDE, UPPER_BACK_TURN, NECK_SIDE, NECK_TURN -> true;
            default -> false;
        };
    }

    public boolean limb() {
        return ordinal() < LOW_BACK_FLEXION.ordinal();
    }
}
