package newel.body;

/** Where an arm is: points in statures, rotations in the world. Missed is how far the hand stays from its target. */
public record ArmAt(Vec shoulder, Vec elbow, Vec wrist, Rot upper, Rot fore, Rot hand, double missed) {
    public Vec palm() {
        return wrist.minus(hand.y().times(Build.HAND_POINT));
    }

    public Vec fingertip() {
        return wrist.minus(hand.y().times(Build.HAND));
    }
}
