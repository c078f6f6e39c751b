package newel.body;

import java.util.ArrayList;
import java.util.List;

/** The way of a movement from its first key pose to its last, solved in between. */
public final class Path {
    /** While the pelvis is within this of the seat, the seat carries it. */
    private static final double OFF_THE_SEAT = 0.012;

    private final List<Posed> keys;

    public Path(List<KeyPose> keyPoses) {
        if (keyPoses.isEmpty()) {
            throw new IllegalArgumentException("a path needs a key pose");
        }
        this.keys = keyPoses.stream().map(Solver::pose).toList();
    }

    public List<Posed> keys() {
        return keys;
    }

    public int legs() {
        return keys.size() - 1;
    }

    /** Solved pose a share of the way (0 to 1) from key pose `leg` to the next. */
    public Posed at(int leg, double share) {
        Posed a = keys.get(leg);
        if (share <= 0 || legs() == 0) {
            return a;
        }
        Posed b = keys.get(leg + 1);
        return share >= 1 ? b : between(a, b, share);
    }

    /** Every key pose, and `steps` − 1 poses between each pair. */
    public List<Posed> samples(int steps) {
        List<Posed> samples = new ArrayList<>();
        samples.add(keys.getFirst());
        for (int leg = 0; leg < legs(); leg++) {
            for (int step = 1; step <= steps; step++) {
                samples.add(at(leg, (double) step / steps));
            }
        }
        return samples;
    }

    private static Posed between(Posed a, Posed b, double share) {
        Pose pose = Blend.of(a.pose(), b.pose(), share);
        Vec pelvis = a.trunk().pelvis().towards(b.trunk().pelvis(), share);
        Contacts contacts =
                seatedStill(a.contacts(), b.contacts(), Blend.of(a.contacts(), b.contacts(), share), pelvis);
        boolean upright = contacts.ground() == Ground.FEET;
        return Solver.at(pose, contacts, upright ? Legs.withinReach(pose, contacts, pelvis) : pelvis);
    }

    /** Between sitting and standing the seat carries until the pelvis leaves it. */
    private static Contacts seatedStill(Contacts a, Contacts b, Contacts mixed, Vec pelvis) {
        if (a.ground() == b.ground()) {
            return mixed;
        }
        Contacts sitting = a.seatHeight() > 0 && a.ground() != Ground.FEET ? a : b;
        boolean on = pelvis.y() < sitting.seatHeight() + Furniture.SITTING + OFF_THE_SEAT;
        return new Contacts(
                on ? sitting.ground() : Ground.FEET,
                sitting.seatHeight(),
                mixed.rightFoot(),
                mixed.leftFoot(),
                mixed.rightHand(),
                mixed.leftHand(),
                mixed.towelWidth(),
                mixed.heldMass());
    }
}
