package newel.handout;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import newel.body.Hand;
import newel.catalogue.Kit;
import newel.catalogue.Variant;
import newel.figure.Thing;

/**
 * What stands around a variant that its poses do not show, from its kit and its set-up words: the picture shows what the
 * words ask for.
 */
final class Surroundings {
    private record Said(Thing thing, Pattern words) {
        Said(Thing thing, String words) {
            this(thing, Pattern.compile(words));
        }
    }

    private static final Set<Said> SAID = Set.of(
            new Said(Thing.CHAIR_AT_WALL, "chair[^.]* (against|touches|back against) (a|the) wall"),
            new Said(Thing.CHAIR_BEHIND, "chair (close )?behind you|(stand|standing) in front of a [^.]*chair"),
            new Said(Thing.CUSHION_AT_BACK, "cushion behind"),
            new Said(Thing.CUSHION_ON_SEAT, "cushion on (the seat|a|your|an?) |cushion under you"),
            new Said(Thing.PILLOWS_AT_BACK, "pillows behind your back"),
            new Said(Thing.ROLL_UNDER_KNEE, "rolled towel under your (right )?knee"),
            new Said(Thing.ROLL_UNDER_CALF, "rolled towel under your (right )?calf"),
            new Said(Thing.TOWEL_BEHIND_THIGH, "towel behind your (left|right) thigh"),
            new Said(Thing.STOOL_BESIDE_BED, "stool on the floor beside"),
            new Said(Thing.DOORWAY, "doorway|door frame"),
            new Said(Thing.LINE, "(on|along) a line|line on the floor"),
            new Said(Thing.BAG_ON_FLOOR, "bag on the floor"),
            new Said(Thing.COUNTER_BEHIND, "back to the counter|hips on (its|the) edge"),
            new Said(Thing.COUNTER_NEAR, "(near|beside) the counter|the counter near"),
            new Said(Thing.TOWEL_ROLL_IN_HANDS, "rolled towel between your hands"),
            new Said(Thing.BAG_AT_CHEST, "bag to your chest"),
            new Said(
                    Thing.ROLL_AHEAD,
                    "(roll|rolled) [^.]*towels?[^.]*\\. drop (it|them) (and push it into place|across|one long)"),
            new Said(
                    Thing.ROLL_BESIDE,
                    "(drop a rolled towel|roll a hand towel tightly\\. drop it) beside your right foot"),
            new Said(Thing.FLAT_TOWEL_AHEAD, "fold a towel flat\\. drop it"),
            new Said(Thing.SECOND_ROLL, "two hand towels[^.]*\\. drop them one long"),
            new Said(Thing.CUSHIONS_TO_KNEEL_ON, "cushions behind your right foot"),
            new Said(Thing.CUSHION_BESIDE_KNEES, "cushion by your right side"),
            new Said(Thing.CUSHIONS_BESIDE_KNEES, "cushion on each side"),
            new Said(Thing.TOWEL_UNDER_HAND, "towel under your right hand"),
            new Said(Thing.CUSHION_AHEAD, "cushion across your path"),
            new Said(Thing.SINK, "\\bsink\\b"),
            new Said(Thing.BAND_ROUND_ANKLES, "band [^.]*round both ankles"),
            new Said(Thing.BAND_TO_CHAIR, "band round the back leg of the chair"));

    static Set<Thing> of(Variant variant) {
        String words = String.join(" ", variant.words().setUp()).toLowerCase(Locale.ROOT);
        Set<Thing> things = EnumSet.noneOf(Thing.class);
        SAID.stream().filter(said -> said.words().matcher(words).find()).forEach(said -> things.add(said.thing()));
        if (variant.kit().contains(Kit.WALL) && !holds(variant, Hand.Hold.WALL) && !holds(variant, Hand.Hold.FIST)) {
            things.add(Thing.WALL_BEHIND);
        }
        if (variant.kit().contains(Kit.STAIRS)) {
            things.add(Thing.STAIRS);
        }
        if (words.contains("towel under") && words.contains("foot") && !holds(variant, Hand.Hold.TOWEL_FOOT)) {
            things.add(Thing.TOWEL_UNDER_FOOT);
        }
        return things;
    }

    private static boolean holds(Variant variant, Hand.Hold hold) {
        return variant.keyPoses().stream()
                .anyMatch(key -> key.contacts().rightHand().hold() == hold
                        || key.contacts().leftHand().hold() == hold);
    }

    private Surroundings() {}
}
