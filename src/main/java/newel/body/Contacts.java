package newel.body;

/**
 * What a pose touches. Seat height in statures (0 where there is no seat); towel width is the distance between the hands
 * that hold a taut towel, 0 for none; heldMass is what each hand holds, as a fraction of body mass.
 */
public record Contacts(
        Ground ground,
        double seatHeight,
        Foot rightFoot,
        Foot leftFoot,
        Hand rightHand,
        Hand leftHand,
        double towelWidth,
        double heldMass) {
    public static final Contacts NONE = new Contacts(Ground.FEET, 0, Foot.OFF, Foot.OFF, Hand.FREE, Hand.FREE, 0, 0);

    public Foot foot(Side side) {
        return side == Side.RIGHT ? rightFoot : leftFoot;
    }

    public Hand hand(Side side) {
        return side == Side.RIGHT ? rightHand : leftHand;
    }
}
