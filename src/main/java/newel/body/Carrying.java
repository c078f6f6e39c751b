package newel.body;

/** Finds where the pelvis is from what carries it. */
final class Carrying {
    static Vec pelvis(Pose pose, Contacts contacts) {
        return switch (contacts.ground()) {
            case SEAT_BACK, SEAT_EDGE -> new Vec(0, contacts.seatHeight() + Furniture.SITTING, 0);
            case BED -> onBed(pose);
            case FEET -> Legs.withinReach(pose, contacts, overFeet(pose, contacts));
            case KNEES -> onKnees(pose, contacts);
        };
    }

    /** The lowest point of the trunk lies on the bed, so that a lifted pelvis stands on the shoulders. */
    private static Vec onBed(Pose pose) {
        boolean side = Math.abs(pose.pelvis().list()) > 45;
        double clear = side ? Furniture.LYING_ON_SIDE : Furniture.LYING;
        TrunkAt trunk = TrunkAt.of(pose, Vec.ZERO);
        double lowest = Math.min(
                0, Math.min(trunk.lumbosacral().y(), trunk.midShoulders().y()));
        return new Vec(0, Furniture.BED + clear - (side ? 0 : lowest), 0);
    }

    private static Vec overFeet(Pose pose, Contacts contacts) {
        TrunkAt trunk = TrunkAt.of(pose, Vec.ZERO);
        Vec sum = Vec.ZERO;
        int feet = 0;
        for (Side side : Side.values()) {
            Foot foot = contacts.foot(side);
            if (foot.carries()) {
                sum = sum.plus(Legs.ankle(foot, side)
                        .minus(Legs.free(trunk, pose.leg(side), side).ankle()));
                feet++;
            }
        }
        return feet == 0 ? standingStraight(trunk, pose) : sum.times(1.0 / feet);
    }

    /** With no foot placed, the lower foot stands under the origin. */
    private static Vec standingStraight(TrunkAt trunk, Pose pose) {
        double right = Legs.free(trunk, pose.rightLeg(), Side.RIGHT).ankle().y();
        double left = Legs.free(trunk, pose.leftLeg(), Side.LEFT).ankle().y();
        return new Vec(0, Build.ANKLE_HEIGHT - Math.min(right, left), 0);
    }

    /** The knees that are down stand on their places; with none placed, the lower one stands on the floor. */
    private static Vec onKnees(Pose pose, Contacts contacts) {
        TrunkAt trunk = TrunkAt.of(pose, Vec.ZERO);
        Vec sum = Vec.ZERO;
        int knees = 0;
        for (Side side : Side.values()) {
            Foot foot = contacts.foot(side);
            if (foot.kneels()) {
                Vec place = new Vec(foot.x(), foot.height() + Furniture.KNEELING, foot.z());
                sum = sum.plus(
                        place.minus(Legs.free(trunk, pose.leg(side), side).knee()));
                knees++;
            }
        }
        return knees == 0 ? onTheLowerKnee(trunk, pose) : sum.times(1.0 / knees);
    }

    private static Vec onTheLowerKnee(TrunkAt trunk, Pose pose) {
        double right = Legs.free(trunk, pose.rightLeg(), Side.RIGHT).knee().y();
        double left = Legs.free(trunk, pose.leftLeg(), Side.LEFT).knee().y();
        return new Vec(0, Furniture.KNEELING - Math.min(right, left), 0);
    }

    private Carrying() {}
}
