package newel.limit;

/** Things that a limitation may rule out altogether. */
public enum Avoidance {
    HEAD_BELOW_HEART,
    STRAIN,
    IMPACT,
    KNEELING,
    LYING_FLAT,
    LOADED_TWIST,
    END_RANGE_SPINE_BENDING,
    QUICK_POSITION_CHANGE,
    QUICK_HEAD_TURN,
    REACHING_BEHIND,
    LIFT_FROM_FLOOR,
    ONE_LEG_WITHOUT_SUPPORT,
    FLOOR,
    OVERHEAD_WHEN_STANDING
}
