package newel.screen;

import static newel.client.RedFlag.*;
import static newel.screen.RedFlagRule.Meanwhile.*;
import static newel.screen.Urgency.*;
import static newel.source.Known.*;

import java.util.List;
import java.util.Locale;
import newel.client.RedFlag;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/**
 * What one red flag calls for.
 *
 * @param meanwhile whether exercise waits; only routine ones let it go on (which of them is a design choice)
 */
public record RedFlagRule(RedFlag flag, Urgency urgency, Meanwhile meanwhile, String citation, Known known) {

    public enum Meanwhile {
        NOTHING,
        GOES_ON
    }

    private static final String SPINE =
            "Finucane et al. 2020, J Orthop Sports Phys Ther 50:350-372, and spinal pathways";
    private static final String AUSTRALIA = "Australian heart-failure exercise guidance";
    private static final String FALL_TRIAGE = "a published fall triage list";

    public static final List<RedFlagRule> ALL = List.of(
            emergency(CHEST_PAIN_NOW, "NHS on heart attack; ACSM signs", PARTLY),
            emergency(SUDDEN_BREATHLESSNESS, "NHS on clots in a vein", SEEN),
            emergency(FACE_ARM_SPEECH, "NHS on stroke signs", SEEN),
            emergency(COLLAPSE_ON_EFFORT, "ESC syncope guideline 2018; ACSM", FROM_MEMORY),
            emergency(SADDLE_NUMBNESS, SPINE, SEEN),
            emergency(FAST_WEAKENING, "UK spinal pathway", SEEN),
            emergency(BROKEN_HIP_SIGNS, FALL_TRIAGE, SEEN),
            emergency(HEAD_INJURY, "NICE NG232 2023", PARTLY),
            emergency(SUDDEN_SEVERE, "NHS; " + FALL_TRIAGE, PARTLY),
            emergency(LOW_SUGAR_NOT_LIFTING, "ADA; NHS", FROM_MEMORY),
            emergency(
                    FEVER_AND_CONFUSED,
                    "the emergency form of D2: AHCPR; UK spinal pathway; level from memory",
                    PARTLY),
            sameDay(ONE_LEG_SWELLING, "NHS on clots in a vein", SEEN),
            sameDay(FEVER_WITH_PAIN, "AHCPR; UK spinal pathway", SEEN),
            sameDay(NEW_SPINE_PAIN, "UK spinal pathway", SEEN),
            sameDay(CHANGED_ANGINA, "BACR 2006; Australian heart-failure guidance", SEEN),
            sameDay(NEW_BREATHLESSNESS, "ACSM; heart-failure guidance", SEEN),
            sameDay(FALL_WITH_INJURY, FALL_TRIAGE, SEEN),
            sameDay(FAINTED, "ACSM signs; level from memory", PARTLY),
            sameDay(VERY_HIGH_PRESSURE, "ESC/ESH", FROM_MEMORY),
            sameDay(EYE_AFTER_SURGERY, "NHS", FROM_MEMORY),
            sameDay(FOOT_ULCER, "NICE NG19", FROM_MEMORY),
            routine(WEIGHT_LOSS_OR_SWEATS, NOTHING, "UK spinal pathway; AHCPR", SEEN),
            routine(NIGHT_PAIN, NOTHING, "AHCPR; UK spinal pathway", PARTLY),
            routine(OLD_SYMPTOM_UNCHECKED, NOTHING, "Riebe et al. 2015", SEEN),
            routine(RAISED_PRESSURE, GOES_ON, "guidelines on blood pressure", FROM_MEMORY),
            routine(REPEATED_FALLS, GOES_ON, "World Falls Guidelines 2022", PARTLY),
            routine(WEAK_OR_SLOW, GOES_ON, "Cruz-Jentoft et al. 2019, Age Ageing 48:16-31", SEEN),
            routine(LEAKING_OR_BULGE, GOES_ON, "NICE NG123", FROM_MEMORY),
            routine(MEMORY_OR_MOOD, NOTHING, "common practice", COMMON_PRACTICE),
            routine(RECENT_CLOT_OR_HEART_ATTACK, NOTHING, AUSTRALIA, SEEN),
            sameDay(RHYTHM_NOT_SETTLED, "BACR 2006; " + AUSTRALIA, SEEN),
            sameDay(HEART_NOT_SETTLED, "BACR 2006; " + AUSTRALIA, SEEN),
            routine(VALVE_OR_INFLAMMATION, NOTHING, AUSTRALIA, SEEN),
            routine(DIABETES_NOT_SETTLED, NOTHING, "BACR 2006, phase IV instructor manual", SEEN));

    static final Statement UNANSWERED = Area.state(
            new Rule("E?", "an unanswered question is never read as no", DESIGN_CHOICE),
            Area.RED_FLAGS,
            "An emergency question without an answer counts as same day; the others are asked first. The highest level wins.");

    public static RedFlagRule of(RedFlag flag) {
        return ALL.get(flag.ordinal());
    }

    public Finding raised() {
        return new Finding(rule(), flag.words() + ".");
    }

    public Finding unanswered() {
        return new Finding(UNANSWERED.rule(), "Not answered yet: " + flag.words() + ".");
    }

    public Rule rule() {
        return new Rule(flag.code(), citation, known);
    }

    Statement stated() {
        return Area.state(
                rule(),
                Area.RED_FLAGS,
                flag.words() + ": " + urgency.words().toLowerCase(Locale.ROOT)
                        + (meanwhile == NOTHING ? "; no exercise until then." : "; exercise goes on meanwhile."));
    }

    private static RedFlagRule emergency(RedFlag flag, String citation, Known known) {
        return new RedFlagRule(flag, EMERGENCY, NOTHING, citation, known);
    }

    private static RedFlagRule sameDay(RedFlag flag, String citation, Known known) {
        return new RedFlagRule(flag, SAME_DAY, NOTHING, citation, known);
    }

    private static RedFlagRule routine(RedFlag flag, Meanwhile meanwhile, String citation, Known known) {
        return new RedFlagRule(flag, ROUTINE, meanwhile, citation, known);
    }
}
