package newel.body;

/** Pelvis in the world, degrees: tilt forward positive (−90 lying on the back), list right side down, turn to the right. */
public record Pelvis(double tilt, double list, double turn) {
    public static final Pelvis LEVEL = new Pelvis(0, 0, 0);
}
