package newel.body;

/** A pose with what it touches; a movement is two to four of these. */
public record KeyPose(String name, Pose pose, Contacts contacts) {}
