package newel.body;

/**
 * What each hand carries, in body weights. A pose may state a share, as an estimate: it pushes up, or back from a wall. Where
 * the pose leaves it open the hands carry what a body that leans on them needs, its feet pressing at the balls: the weight
 * times its lever about the balls, over the way from there to the hands, square to that way, both hands alike.
 */
final class Leaning {
    static Carried.Force on(Posed posed, Side side) {
        Hand hand = posed.contacts().hand(side);
        Vec at = posed.arm(side).palm();
        return leans(hand)
                ? new Carried.Force(at, needed(posed).times(0.5))
                : new Carried.Force(at, stated(hand).times(hand.share()));
    }

    static double share(Posed posed, Side side) {
        Hand hand = posed.contacts().hand(side);
        return leans(hand) ? needed(posed).length() / 2 : hand.share();
    }

    private static boolean leans(Hand hand) {
        return Double.isNaN(hand.share());
    }

    private static Vec stated(Hand hand) {
        boolean level = hand.hold() == Hand.Hold.WALL || hand.hold() == Hand.Hold.FIST;
        return level ? new Vec(-1, 0, 0) : Vec.UP;
    }

    private static Vec needed(Posed posed) {
        Vec balls = posed.rightLeg().ball().towards(posed.leftLeg().ball(), 0.5);
        Vec hands = posed.rightArm().palm().towards(posed.leftArm().palm(), 0.5);
        Vec way = new Vec(hands.x() - balls.x(), hands.y() - balls.y(), 0);
        double lever = new Bodies(posed, Masses.WINTER).centre().x() - balls.x();
        return new Vec(-way.y(), way.x(), 0).unit().times(Math.max(0, lever / way.length()));
    }

    private Leaning() {}
}
