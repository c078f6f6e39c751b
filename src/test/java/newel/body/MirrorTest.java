package newel.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import newel.Shipped;
import newel.catalogue.Variant;
import org.junit.jupiter.api.Test;

class MirrorTest {
    private static final double AGREES = 1e-9;

    @Test
    void a_mirrored_pose_puts_every_joint_on_the_other_side() {
        for (Variant variant : Shipped.CATALOGUE.variants()) {
            for (KeyPose key : variant.keyPoses()) {
                List<Vec> one = joints(Solver.pose(key), Side.RIGHT);
                List<Vec> other = joints(Solver.pose(Mirror.of(key)), Side.LEFT);
                for (int i = 0; i < one.size(); i++) {
                    Vec flipped = new Vec(
                            other.get(i).x(), other.get(i).y(), -other.get(i).z());
                    assertEquals(0, one.get(i).distance(flipped), AGREES, variant.id() + ", " + key.name());
                }
            }
        }
    }

    @Test
    void mirrored_twice_it_is_as_it_was() {
        for (Variant variant : Shipped.CATALOGUE.variants()) {
            for (KeyPose key : variant.keyPoses()) {
                assertEquals(
                        Solver.pose(key).trunk().nose(),
                        Solver.pose(Mirror.of(Mirror.of(key))).trunk().nose());
            }
        }
    }

    private static List<Vec> joints(Posed posed, Side side) {
        return List.of(
                posed.trunk().c7(),
                posed.trunk().nose(),
                posed.arm(side).shoulder(),
                posed.arm(side).elbow(),
                posed.arm(side).palm(),
                posed.leg(side).hip(),
                posed.leg(side).knee(),
                posed.leg(side).ball());
    }
}
