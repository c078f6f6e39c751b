package newel.limit;

import java.util.List;
import newel.body.Demands;
import newel.body.KeyPose;
import newel.body.Part;

/** What key poses ask of a body when a part of them goes these shares of its way. */
@FunctionalInterface
public interface Measuring {
    Demands measure(List<KeyPose> keyPoses, Part part, double left, double right);
}
