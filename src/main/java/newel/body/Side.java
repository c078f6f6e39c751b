package newel.body;

/** A side of the person, not of the picture. */
public enum Side {
    LEFT(-1),
    RIGHT(1);

    private final int sign;

    Side(int sign) {
        this.sign = sign;
    }

    /** +1 on the right, −1 on the left: the sign of Z. */
    public int sign() {
        return sign;
    }

    public Side other() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
