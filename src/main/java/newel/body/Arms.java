package newel.body;

/** Places an arm: by its angles, or by two bones when the hand has something to meet. */
final class Arms {
    /** The heel of the hand lies this far beyond the wrist; a flat hand meets a surface there. */
    private static final double HEEL_OF_HAND = 0.02;
    /** From the hip–knee line to the front of the thigh. */
    private static final double THIGH_FRONT = 0.05;

    static ArmAt free(TrunkAt trunk, Arm arm, Side side) {
        int s = side.sign();
        Rot upper = trunk.thoraxTurn()
                .then(Angles.swing(arm.plane(), arm.raise(), side))
                .then(Rot.aboutY(-s * arm.turn()));
        Rot fore = upper.then(Rot.aboutZ(arm.elbow()));
        Rot hand = fore.then(Rot.aboutY(-s * arm.supination())).then(Rot.aboutX(-s * arm.wrist()));
        Vec shoulder = trunk.shoulder(side, arm);
        Vec elbow = shoulder.minus(upper.y().times(Build.UPPER_ARM));
        return new ArmAt(shoulder, elbow, elbow.minus(fore.y().times(Build.FOREARM)), upper, fore, hand, 0);
    }

    /** Brings the middle of the palm, in line with the forearm, to a point. */
    static ArmAt palmTo(ArmAt wished, Vec point) {
        TwoBones.Reached r = TwoBones.ARM_AND_PALM.reach(
                wished.shoulder(), point, wished.upper().z(), false);
        Vec wrist = r.middle().minus(r.lowerTurn().y().times(Build.FOREARM));
        return new ArmAt(wished.shoulder(), r.middle(), wrist, r.upperTurn(), r.lowerTurn(), r.lowerTurn(), r.missed());
    }

    /** Brings the wrist to a point, the hand lying along a direction. */
    static ArmAt wristTo(ArmAt wished, Vec point, Vec along) {
        TwoBones.Reached r =
                TwoBones.ARM.reach(wished.shoulder(), point, wished.upper().z(), false);
        Rot hand = Rot.bone(along, r.lowerTurn().z());
        return new ArmAt(wished.shoulder(), r.middle(), r.end(), r.upperTurn(), r.lowerTurn(), hand, r.missed());
    }

    static ArmAt held(ArmAt wished, Hand hand, LegAt leg) {
        return switch (hand.hold()) {
            case CHAIR_BACK, RAIL, OTHER_HAND -> palmTo(wished, hand.at());
            case WALL -> wristTo(wished, hand.at().minus(new Vec(HEEL_OF_HAND, HEEL_OF_HAND, 0)), Vec.UP);
            case COUNTER, SEAT, ARMREST, BED -> flatOn(wished, hand.at());
            case THIGH -> onThigh(wished, hand.at().x(), leg);
            case FREE, HEAD, TOWEL, TOWEL_FOOT, BAG, BOTTLE, BAND -> wished;
        };
    }

    /** A hand lying on a level surface points away from its shoulder. */
    private static ArmAt flatOn(ArmAt wished, Vec palm) {
        Vec from = wished.shoulder();
        Vec away = new Vec(palm.x() - from.x(), 0, palm.z() - from.z());
        Vec along = away.length() < 0.03 ? new Vec(1, 0, 0) : away.unit();
        return wristTo(wished, palm.minus(along.times(Build.HAND_POINT)), along);
    }

    private static ArmAt onThigh(ArmAt wished, double share, LegAt leg) {
        Vec along = leg.knee().minus(leg.hip()).unit();
        Vec palm = leg.hip().towards(leg.knee(), share).plus(leg.thigh().x().times(THIGH_FRONT));
        return wristTo(wished, palm.minus(along.times(Build.HAND_POINT)), along);
    }

    /** The arm's angles as solved; the wrist's bend is that between forearm and hand. */
    static Arm angles(TrunkAt trunk, Arm arm, ArmAt at, Side side) {
        Arm solved = Angles.shoulder(arm, trunk.thoraxTurn().inverse().then(at.upper()), side);
        Rot elbow = at.upper().inverse().then(at.fore());
        double bend = Math.toDegrees(Math.atan2(elbow.x().y(), elbow.x().x()));
        double wrist = Math.toDegrees(Math.acos(
                Math.max(-1, Math.min(1, at.fore().y().dot(at.hand().y())))));
        return new Arm(
                solved.plane(),
                solved.raise(),
                solved.turn(),
                bend,
                arm.supination(),
                wrist,
                arm.lift(),
                arm.forward());
    }

    private Arms() {}
}
