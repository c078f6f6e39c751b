package newel.body;

/** Places an arm: by its angles, or by two bones when the hand has something to meet. */
final class Arms {
    /** The heel of the hand lies this far beyond the wrist; a flat hand meets a surface there. */
    private static final double HEEL_OF_HAND = 0.02;
    /** Wrist bent back under a hand that carries, degrees: older people reach 63 by themselves (Walker 1984), more under load
     * (design choice). */
    private static final double MOST_WRIST = 80;
    /** How much a hand that comes straight down points ahead, against the level part of its way (design choice). */
    private static final double FORWARD = 0.2;
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
        Rot hand = Rot.bone(within(along, r.lowerTurn()), r.lowerTurn().z());
        return new ArmAt(wished.shoulder(), r.middle(), r.end(), r.upperTurn(), r.lowerTurn(), hand, r.missed());
    }

    /** A hand lies along a surface only as far as the wrist bends back; beyond that its fingers come off. */
    private static Vec within(Vec along, Rot fore) {
        Vec straight = fore.y().times(-1);
        double bend = Math.acos(Math.max(-1, Math.min(1, straight.dot(along))));
        double most = Math.toRadians(MOST_WRIST);
        if (bend <= most) {
            return along;
        }
        Vec across = along.minus(straight.times(straight.dot(along))).unit();
        return straight.times(Math.cos(most)).plus(across.times(Math.sin(most)));
    }

    static ArmAt held(ArmAt wished, Hand hand, LegAt leg) {
        return switch (hand.hold()) {
            case CHAIR_BACK, RAIL, OTHER_HAND, FIST -> palmTo(wished, hand.at());
            case WALL -> wristTo(wished, hand.at().minus(new Vec(HEEL_OF_HAND, HEEL_OF_HAND, 0)), Vec.UP);
            case COUNTER, SEAT, ARMREST, BED, FLOOR -> flatOn(wished, hand.at());
            case THIGH -> onThigh(wished, hand.at().x(), leg);
            case FREE, HEAD, LEG, TOWEL, TOWEL_FOOT, BAG, BOTTLE, BAND, BAND_FOOT -> wished;
        };
    }

    /** A hand lying on a level surface points on from its forearm, and forward where the forearm comes straight down. */
    private static ArmAt flatOn(ArmAt wished, Vec palm) {
        Vec from = wished.shoulder();
        Vec first = level(new Vec(palm.x() - from.x(), 0, palm.z() - from.z()));
        ArmAt roughly = wristTo(wished, palm.minus(first.times(Build.HAND_POINT)), first);
        Vec along = level(roughly.fore().y().times(-1));
        return wristTo(wished, palm.minus(along.times(Build.HAND_POINT)), along);
    }

    private static Vec level(Vec way) {
        return new Vec(way.x() + FORWARD, 0, way.z()).unit();
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
