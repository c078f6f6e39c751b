package newel.catalogue;

/** Camera in degrees: yaw 0 from the person's right, −90 from the front, 90 from behind; pitch is how far it is raised. */
public record View(double yaw, double pitch) {}
