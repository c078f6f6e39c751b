package newel.limit;

import java.util.EnumSet;
import java.util.Set;
import newel.body.Contacts;
import newel.body.Foot;
import newel.body.Ground;
import newel.body.Hand;
import newel.body.KeyPose;
import newel.body.Part;
import newel.body.Side;
import newel.catalogue.Sides;
import newel.catalogue.Variant;

/** Whether the two sides of a variant can go different shares of their way. */
final class Coupling {
    private static final Set<Hand.Hold> BOTH_HANDS = EnumSet.of(
            Hand.Hold.TOWEL, Hand.Hold.TOWEL_FOOT, Hand.Hold.OTHER_HAND, Hand.Hold.BAND, Hand.Hold.BAND_FOOT);

    private Coupling() {}

    /** Sides that take turns go their own share; sides that work at once only when nothing ties them together. */
    static boolean apart(Variant variant) {
        return variant.trim().part() != Part.NONE && (variant.sides() != Sides.TOGETHER || limbsApart(variant));
    }

    /** Each limb has its own share; otherwise a share is that of the whole pass. */
    static boolean limbsApart(Variant variant) {
        return switch (variant.trim().part()) {
            case ARMS -> variant.keyPoses().stream().noneMatch(pose -> handsTied(pose.contacts()));
            case LEGS -> variant.keyPoses().stream().noneMatch(Coupling::feetTied);
            case NONE, TRUNK, WHOLE -> false;
        };
    }

    /** Both hands on one towel, on each other, or on the things that carry them. */
    private static boolean handsTied(Contacts contacts) {
        Hand.Hold right = contacts.rightHand().hold();
        Hand.Hold left = contacts.leftHand().hold();
        return contacts.towelWidth() > 0
                || BOTH_HANDS.contains(right)
                || BOTH_HANDS.contains(left)
                || right.support() && left.support();
    }

    /** Both feet carry a standing body. */
    private static boolean feetTied(KeyPose pose) {
        Contacts contacts = pose.contacts();
        return contacts.ground() == Ground.FEET && carries(contacts, Side.RIGHT) && carries(contacts, Side.LEFT);
    }

    private static boolean carries(Contacts contacts, Side side) {
        Foot foot = contacts.foot(side);
        return foot.carries();
    }
}
