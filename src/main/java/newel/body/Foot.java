package newel.body;

/**
 * Where a foot is. X and Z are those of the ankle when the foot stands flat, height is that of the surface, pitch is toes
 * up positive (on the heel) or heel up negative (on the ball), turn is the toes' direction outward; all lengths in
 * statures, angles in degrees. Share is the part of the body weight that the author says it carries, or NaN to compute it.
 */
public record Foot(Placement placement, double x, double z, double height, double pitch, double turn) {
    public enum Placement {
        /** The whole sole is down and carries. */
        FLAT,
        /** Heel down, toes up. */
        HEEL,
        /** Ball down, heel up. */
        BALL,
        /** In place but without weight. */
        TOUCH,
        /** The knee is down: X and Z are those of the knee, height that of what it kneels on. */
        KNEELING,
        /** Held in the air or lying: placed by the leg's angles alone. */
        FREE
    }

    public static final Foot OFF = new Foot(Placement.FREE, 0, 0, 0, 0, 0);

    public boolean carries() {
        return placement == Placement.FLAT || placement == Placement.HEEL || placement == Placement.BALL;
    }

    public boolean kneels() {
        return placement == Placement.KNEELING;
    }

    /** The sole has a place that the leg is solved for. */
    public boolean placed() {
        return placement != Placement.FREE && !kneels();
    }
}
