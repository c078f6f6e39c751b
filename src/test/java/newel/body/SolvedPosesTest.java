package newel.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Forward kinematics against joint positions that a separate implementation solved from the same angles. */
class SolvedPosesTest {
    /** Their points are rounded to four places and their held hands solved to a hundredth of the arm. */
    private static final double AGREES = 0.004;

    @Test
    void joints_lie_where_a_second_implementation_puts_them() throws Exception {
        JsonNode poses = new ObjectMapper().readTree(getClass().getResource("solved-poses.json"));
        List<String> off = new ArrayList<>();
        for (JsonNode each : poses) {
            Posed ours = Solver.at(
                    pose(each.get("angles")),
                    Contacts.NONE,
                    point(each.get("points").get("pelvis")));
            compare(each, "c7", ours.trunk().c7(), off);
            for (Side side : Side.values()) {
                String name = side == Side.RIGHT ? "Right" : "Left";
                compare(each, "shoulder" + name, ours.arm(side).shoulder(), off);
                compare(each, "elbow" + name, ours.arm(side).elbow(), off);
                compare(each, "wrist" + name, ours.arm(side).wrist(), off);
                compare(each, "hip" + name, ours.leg(side).hip(), off);
                compare(each, "knee" + name, ours.leg(side).knee(), off);
                compare(each, "ankle" + name, ours.leg(side).ankle(), off);
            }
        }
        assertEquals(List.of(), off);
    }

    private static void compare(JsonNode each, String joint, Vec ours, List<String> off) {
        double distance = ours.distance(point(each.get("points").get(joint)));
        if (distance > AGREES) {
            off.add("%s, %s: %s is %.4f off"
                    .formatted(each.get("variant").asText(), each.get("pose").asText(), joint, distance));
        }
    }

    private static Pose pose(JsonNode a) {
        return new Pose(
                new Pelvis(at(a, "pelvis", "tilt"), at(a, "pelvis", "list"), at(a, "pelvis", "turn")),
                spine(a.get("lumbar")),
                spine(a.get("thorax")),
                spine(a.get("neck")),
                0,
                arm(a.get("right")),
                arm(a.get("left")),
                leg(a.get("right")),
                leg(a.get("left")));
    }

    private static Spine spine(JsonNode part) {
        return new Spine(
                part.get("flex").asDouble(),
                part.get("side").asDouble(),
                part.get("turn").asDouble());
    }

    private static Arm arm(JsonNode side) {
        return new Arm(
                at(side, "arm", "plane"),
                at(side, "arm", "raise"),
                at(side, "arm", "turn"),
                side.get("elbow").asDouble(),
                0,
                0,
                0,
                0);
    }

    private static Leg leg(JsonNode side) {
        return new Leg(
                at(side, "hip", "flex"),
                at(side, "hip", "abd"),
                at(side, "hip", "out"),
                side.get("knee").asDouble(),
                side.get("ankle").asDouble(),
                0,
                0);
    }

    private static double at(JsonNode node, String part, String angle) {
        return node.get(part).get(angle).asDouble();
    }

    private static Vec point(JsonNode xyz) {
        return new Vec(xyz.get(0).asDouble(), xyz.get(1).asDouble(), xyz.get(2).asDouble());
    }
}
