package newel.body;

import java.util.List;

/** Places a leg: by its angles when the foot is free, by two bones when the foot has a place. */
final class Legs {
    /** Clear of the full stretch, where the hinge plane is lost. */
    private static final double ALMOST_STRAIGHT = 0.9998;

    static LegAt free(TrunkAt trunk, Leg leg, Side side) {
        int s = side.sign();
        Rot thigh = trunk.pelvisTurn()
                .then(Rot.aboutZ(leg.flex()))
                .then(Rot.aboutX(-s * leg.abd()))
                .then(Rot.aboutY(-s * leg.out()));
        Rot shank = thigh.then(Rot.aboutZ(-leg.knee()));
        Rot foot = shank.then(Rot.aboutZ(leg.ankle()))
                .then(Rot.aboutY(-s * leg.footTurn()))
                .then(Rot.aboutX(s * leg.footTip()));
        Vec hip = trunk.hip(side);
        Vec knee = hip.minus(thigh.y().times(Build.THIGH));
        return new LegAt(hip, knee, knee.minus(shank.y().times(Build.SHANK)), thigh, shank, foot, 0);
    }

    static LegAt placed(TrunkAt trunk, Leg leg, Side side, Vec ankle, Rot foot) {
        LegAt wished = free(trunk, leg, side);
        TwoBones.Reached r =
                TwoBones.LEG.reach(wished.hip(), ankle, wished.thigh().z(), true);
        return new LegAt(wished.hip(), r.middle(), r.end(), r.upperTurn(), r.lowerTurn(), foot, r.missed());
    }

    /** Turn of a placed foot in the world. */
    static Rot turn(Foot foot, Side side) {
        return Rot.aboutY(-side.sign() * foot.turn()).then(Rot.aboutZ(foot.pitch()));
    }

    /** Where the ankle of a placed foot is: a pitched foot pivots on its heel or its ball. */
    static Vec ankle(Foot foot, Side side) {
        Vec flat = new Vec(foot.x(), foot.height() + Build.ANKLE_HEIGHT, foot.z());
        if (foot.pitch() == 0) {
            return flat;
        }
        boolean onHeel = foot.pitch() > 0 && foot.placement() != Foot.Placement.BALL;
        double ahead = onHeel ? -Build.HEEL_BEHIND : Build.BALL_AHEAD;
        Vec pivot = new Vec(ahead, -Build.ANKLE_HEIGHT, 0);
        Rot level = Rot.aboutY(-side.sign() * foot.turn());
        return flat.plus(level.of(pivot)).minus(turn(foot, side).of(pivot));
    }

    /**
     * Lowers or shifts the pelvis until every placed foot is within a leg's reach of its hip. Halfway between beginning
     * with the one side and with the other, so that a mirrored pose comes out mirrored; between two places within reach
     * all are.
     */
    static Vec withinReach(Pose pose, Contacts contacts, Vec pelvis) {
        TrunkAt trunk = TrunkAt.of(pose, Vec.ZERO);
        Vec rightFirst = withinReach(trunk, contacts, pelvis, List.of(Side.RIGHT, Side.LEFT));
        return rightFirst.towards(withinReach(trunk, contacts, pelvis, List.of(Side.LEFT, Side.RIGHT)), 0.5);
    }

    /** @param trunk with its pelvis at the origin */
    private static Vec withinReach(TrunkAt trunk, Contacts contacts, Vec pelvis, List<Side> order) {
        Vec at = pelvis;
        for (int pass = 0; pass < 8; pass++) {
            Vec before = at;
            for (Side side : order) {
                Foot foot = contacts.foot(side);
                if (foot.placed()) {
                    at = pulled(trunk.hip(side), ankle(foot, side), at);
                }
            }
            if (at == before) {
                break;
            }
        }
        return at;
    }

    /** @param hip from the pelvis */
    private static Vec pulled(Vec hip, Vec ankle, Vec pelvis) {
        double most = ALMOST_STRAIGHT * (Build.THIGH + Build.SHANK);
        Vec way = ankle.minus(pelvis.plus(hip));
        double length = way.length();
        return length <= most ? pelvis : pelvis.plus(way.unit().times(length - most));
    }

    /** The leg's angles as solved. */
    static Leg angles(TrunkAt trunk, Leg leg, LegAt at, Side side) {
        Leg hip = Angles.hip(leg, trunk.pelvisTurn().inverse().then(at.thigh()), side);
        Rot knee = at.thigh().inverse().then(at.shank());
        double bend = Math.toDegrees(Math.atan2(-knee.x().y(), knee.x().x()));
        Leg bent = new Leg(hip.flex(), hip.abd(), hip.out(), bend, leg.ankle(), 0, 0);
        return Angles.ankle(bent, at.shank().inverse().then(at.foot()), side);
    }

    private Legs() {}
}
