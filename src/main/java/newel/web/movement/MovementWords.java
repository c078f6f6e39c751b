package newel.web.movement;

import java.util.List;
import java.util.Locale;
import newel.catalogue.Grip;
import newel.catalogue.Position;
import newel.catalogue.Sides;
import newel.catalogue.Support;
import newel.catalogue.Trait;

/** The catalogue's own words, for the instructor. */
public final class MovementWords {
    static String of(Position position) {
        return switch (position) {
            case LYING -> "lying";
            case SEATED_BACK -> "sitting back";
            case SEATED_EDGE -> "sitting at the edge";
            case STANDING -> "standing";
            case STEPPING -> "stepping";
            case FLOOR -> "down on the floor";
        };
    }

    static String of(Support support) {
        return switch (support) {
            case FULL -> "carried by a bed or back rest";
            case TWO_HANDS -> "two hands hold on";
            case ONE_HAND -> "one hand holds on";
            case FINGERTIPS -> "fingertips touch";
            case NONE -> "nothing to hold on to";
        };
    }

    static String of(Sides sides) {
        return switch (sides) {
            case TOGETHER -> "both sides at once";
            case ALTERNATING -> "changing sides each time";
            case EACH -> "all on one side, then on the other";
        };
    }

    static String of(Grip grip) {
        return switch (grip) {
            case NONE -> "none";
            case LIGHT -> "light";
            case FIRM -> "firm";
        };
    }

    static String of(Trait trait) {
        return switch (trait) {
            case STRAIN -> "breath is easily held";
            case IMPACT -> "lands with a jolt";
            case KNEELING -> "kneels";
            case LYING_FLAT -> "lies flat";
            case LOADED_TWIST -> "twists with a load";
            case QUICK_POSITION_CHANGE -> "changes position quickly";
            case QUICK_HEAD_TURN -> "turns the head quickly";
            case HEAD_TURN -> "turns the head";
            case LIFT_FROM_FLOOR -> "lifts from near the floor";
            case FLOOR_TRANSFER -> "gets down to the floor and up";
            case HAND_PRESS -> "presses a hand down on the leg";
        };
    }

    /** A constant whose name is its word: {@code UPPER_BACK} as "upper back". */
    public static String plain(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    static String forms(long number) {
        return number == 1 ? "1 form" : number + " forms";
    }

    static String movements(long number) {
        return number == 1 ? "1 movement" : number + " movements";
    }

    /** "a, b and c" */
    static String list(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    private MovementWords() {}
}
