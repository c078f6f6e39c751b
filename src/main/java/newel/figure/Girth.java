package newel.figure;

/**
 * How broad a body is drawn, never how long. Factors on the widths of {@link Torso}, {@link ArmShape} and
 * {@link LegShape}: design choice, about one standard deviation of ANSUR II waist breadth either way.
 */
public enum Girth {
    SLIM(0.90, 0.88, 0.92),
    MIDDLE(1, 1, 1.06),
    BROAD(1.15, 1.13, 1.30);

    private final double trunk;
    private final double limbs;
    private final double belly;

    Girth(double trunk, double limbs, double belly) {
        this.trunk = trunk;
        this.limbs = limbs;
        this.belly = belly;
    }

    double trunk() {
        return trunk;
    }

    double limbs() {
        return limbs;
    }

    /** How far the belly stands out. */
    double belly() {
        return belly;
    }

    String words(Look.Sex sex) {
        String person = sex == Look.Sex.WOMAN ? "woman" : "man";
        return switch (this) {
            case SLIM -> "slim " + person;
            case MIDDLE -> person;
            case BROAD -> "broad " + person;
        };
    }
}
