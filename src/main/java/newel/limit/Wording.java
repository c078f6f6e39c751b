package newel.limit;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import newel.body.Motion;
import newel.body.Side;
import newel.catalogue.Kit;

/** Turns what was broken into a plain sentence. */
final class Wording {
    private Wording() {}

    /** "Raises the right arm to 165°; the limit is 80°" */
    static String angle(Motion motion, Who who, double degrees, double max) {
        return capital(motion(motion, who)) + " to " + degrees(degrees) + "; the limit is " + degrees(max);
    }

    static String side(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    static String plain(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** "Needs a chair and a towel; there are none" */
    static String needs(List<Kit> missing) {
        boolean one = missing.size() == 1 && missing.getFirst() != Kit.STAIRS;
        String last = one(missing.getLast());
        String before =
                missing.stream().limit(missing.size() - 1).map(Wording::one).collect(Collectors.joining(", "));
        return "Needs " + (before.isEmpty() ? last : before + " and " + last)
                + (one ? "; there is none" : "; there are none");
    }

    private static String one(Kit kit) {
        return switch (kit) {
            case ARMCHAIR -> "an armchair";
            case STAIRS -> "stairs";
            case WALL -> "a free wall";
            case CHAIR, TOWEL, COUNTER, STEP, CUSHION, BAG, BOTTLE, BAND, BED -> "a " + plain(kit);
        };
    }

    static String degrees(double degrees) {
        return Math.round(degrees) + "°";
    }

    static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** What comes after the first word of the verb comes after the part: "takes the right hip back". */
    private static String motion(Motion motion, Who who) {
        String[] verb = motion.verb().split(" ", 2);
        String rest = verb.length > 1 ? " " + verb[1] : "";
        if (!motion.limb()) {
            return verb[0] + " the " + motion.part() + (motion.directed() ? who.towards() : rest);
        }
        return rest.endsWith(" with")
                ? motion.verb() + who.has(motion.part())
                : verb[0] + who.has(motion.part()) + rest;
    }

    /** The sides that a sentence is about. */
    enum Who {
        LEFT,
        RIGHT,
        BOTH;

        static Who of(Side... sides) {
            return sides.length == 2
                    ? BOTH
                    : valueOf(Arrays.stream(sides).findFirst().orElseThrow().name());
        }

        String has(String part) {
            return switch (this) {
                case LEFT -> " the left " + part;
                case RIGHT -> " the right " + part;
                case BOTH -> " both " + part + "s";
            };
        }

        String towards() {
            return switch (this) {
                case LEFT -> " to the left,";
                case RIGHT -> " to the right,";
                case BOTH -> " to each side,";
            };
        }
    }
}
