package newel.limit;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.Predicate;
import newel.body.Contacts;
import newel.body.Demands;
import newel.body.Ground;
import newel.body.Hand;
import newel.body.KeyPose;
import newel.body.Side;
import newel.catalogue.Dose;
import newel.catalogue.Grip;
import newel.catalogue.Position;
import newel.catalogue.Sides;
import newel.catalogue.Support;
import newel.catalogue.Trait;
import newel.catalogue.Variant;

/**
 * What a variant asks of a person at one share, both sides' passes together. What the poses show counts beside what the
 * catalogue says: of two readings the one that asks more.
 *
 * @param positions every posture that it passes through
 * @param support the least support that a standing moment of it has
 * @param supportedHands the sides on which a hand rests on something that carries
 * @param holdingHands the sides on which a hand holds something
 * @param standingSeconds of one set, at the beginner's dose
 * @param armsHighSeconds of one set, at the beginner's dose
 * @param holdSeconds the longest hold against effort within the dose range
 */
record Asked(
        Variant variant,
        Demands body,
        Set<Position> positions,
        Support support,
        Set<Side> supportedHands,
        Set<Side> holdingHands,
        Grip grip,
        double heldBodyMasses,
        boolean oneLegUnsupported,
        int standingSeconds,
        int armsHighSeconds,
        int holdSeconds) {

    private static final Set<Hand.Hold> HELD = EnumSet.of(
            Hand.Hold.TOWEL,
            Hand.Hold.TOWEL_FOOT,
            Hand.Hold.BAG,
            Hand.Hold.BOTTLE,
            Hand.Hold.BAND,
            Hand.Hold.BAND_FOOT);

    static Asked of(Variant variant, Demands body) {
        Set<Side> holding = hands(variant, hold -> HELD.contains(hold) || hold.support());
        int setSeconds = setSeconds(variant, variant.dose().beginner());
        return new Asked(
                variant,
                body,
                positions(variant),
                support(variant),
                hands(variant, Hand.Hold::support),
                holding,
                grip(variant),
                variant.keyPoses().stream()
                        .mapToDouble(pose -> pose.contacts().heldMass())
                        .max()
                        .orElse(0),
                variant.keyPoses().stream().anyMatch(pose -> oneLegUnsupported(pose.contacts())),
                standingSeconds(variant, setSeconds),
                armsHighSeconds(body, setSeconds),
                variant.holdSeconds());
    }

    /** The same with another dose, which changes how long things last and nothing else. */
    Asked with(Dose dose) {
        if (dose.equals(variant.dose().beginner())) {
            return this;
        }
        int setSeconds = setSeconds(variant, dose);
        return new Asked(
                variant,
                body,
                positions,
                support,
                supportedHands,
                holdingHands,
                grip,
                heldBodyMasses,
                oneLegUnsupported,
                standingSeconds(variant, setSeconds),
                armsHighSeconds(body, setSeconds),
                variant.holdSeconds() == 0 ? 0 : Math.max(variant.holdSeconds(), dose.seconds()));
    }

    private static int armsHighSeconds(Demands body, int setSeconds) {
        return (int) Math.ceil(body.armsHigh() * setSeconds);
    }

    /** As part of a sequence: who sits down in each repetition does not go on standing from the item before. */
    Lasts lasts() {
        boolean sits = anyGround(variant, Ground.SEAT_BACK) || anyGround(variant, Ground.SEAT_EDGE);
        return new Lasts(sits ? 0 : standingSeconds, armsHighSeconds);
    }

    boolean has(Trait trait) {
        return variant.traits().contains(trait);
    }

    boolean stands() {
        return positions.contains(Position.STANDING) || positions.contains(Position.STEPPING);
    }

    boolean kneels() {
        return has(Trait.KNEELING) || anyGround(variant, Ground.KNEES);
    }

    private static Set<Position> positions(Variant variant) {
        Set<Position> positions = EnumSet.of(variant.position());
        if (anyGround(variant, Ground.FEET) && variant.position() != Position.STEPPING) {
            positions.add(Position.STANDING);
        }
        if (anyGround(variant, Ground.KNEES) || variant.traits().contains(Trait.FLOOR_TRANSFER)) {
            positions.add(Position.FLOOR);
        }
        return positions;
    }

    private static boolean anyGround(Variant variant, Ground ground) {
        return variant.keyPoses().stream().anyMatch(pose -> pose.contacts().ground() == ground);
    }

    private static Support support(Variant variant) {
        return variant.keyPoses().stream()
                .map(KeyPose::contacts)
                .filter(contacts -> contacts.ground() == Ground.FEET)
                .map(contacts -> posedSupport(variant, contacts))
                .reduce(variant.support(), (a, b) -> a.compareTo(b) > 0 ? a : b);
    }

    /** Standing against something with full support shows no hands; otherwise the hands on fixed things count. */
    private static Support posedSupport(Variant variant, Contacts contacts) {
        if (variant.support() == Support.FULL && variant.position() == Position.STANDING) {
            return Support.FULL;
        }
        boolean right = contacts.rightHand().hold().support();
        boolean left = contacts.leftHand().hold().support();
        return right && left ? Support.TWO_HANDS : right || left ? Support.ONE_HAND : Support.NONE;
    }

    /** Sides that take turns bring both hands into every role. */
    private static Set<Side> hands(Variant variant, Predicate<Hand.Hold> role) {
        Set<Side> sides = EnumSet.noneOf(Side.class);
        for (KeyPose pose : variant.keyPoses()) {
            Arrays.stream(Side.values())
                    .filter(side -> role.test(pose.contacts().hand(side).hold()))
                    .forEach(sides::add);
        }
        return sides.isEmpty() || variant.sides() == Sides.TOGETHER ? sides : EnumSet.allOf(Side.class);
    }

    /** Whoever holds a thing closes the hand at least lightly. */
    private static Grip grip(Variant variant) {
        boolean holds = !hands(variant, HELD::contains).isEmpty();
        return holds && variant.grip() == Grip.NONE ? Grip.LIGHT : variant.grip();
    }

    private static boolean oneLegUnsupported(Contacts contacts) {
        boolean oneLeg = contacts.ground() == Ground.FEET
                && contacts.rightFoot().carries() != contacts.leftFoot().carries();
        boolean supported = contacts.rightHand().hold().support()
                || contacts.leftHand().hold().support();
        return oneLeg && !supported;
    }

    /** Seconds of one set, both sides of it when they take turns without a break. */
    private static int setSeconds(Variant variant, Dose dose) {
        double once = dose.repetitions() == 0
                ? dose.seconds()
                : dose.repetitions() * (variant.tempo().seconds() + dose.seconds());
        return (int) Math.ceil(variant.sides() == Sides.EACH ? 2 * once : once);
    }

    /** Who sits down in each repetition stands no longer than one repetition. */
    private static int standingSeconds(Variant variant, int setSeconds) {
        if (!anyGround(variant, Ground.FEET)) {
            return 0;
        }
        boolean sits = anyGround(variant, Ground.SEAT_BACK) || anyGround(variant, Ground.SEAT_EDGE);
        return sits ? (int) Math.ceil(variant.tempo().seconds()) : setSeconds;
    }
}
