package newel.screen;

import static newel.client.DaySign.*;
import static newel.screen.DayRule.Then.*;
import static newel.source.Known.*;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import newel.client.DaySign;
import newel.client.RedFlag;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/**
 * What a yes at the door calls for. The set of questions and what is light only are ours.
 *
 * @param flag the sign that a yes stands for beyond the day, until somebody has looked
 */
record DayRule(DaySign sign, Then yes, Then unknown, Rule rule, Optional<RedFlag> flag) {
    enum Then {
        EMERGENCY("the emergency number"),
        DOCTOR_TODAY("a doctor today"),
        NOT_TODAY("not today"),
        LIGHT("light only"),
        GO("go");

        private final String words;

        Then(String words) {
            this.words = words;
        }
    }

    private static final Map<DaySign, RedFlag> BEYOND = Map.of(
            CHEST,
            RedFlag.CHEST_PAIN_NOW,
            STROKE,
            RedFlag.FACE_ARM_SPEECH,
            BREATH,
            RedFlag.NEW_BREATHLESSNESS,
            DaySign.FAINTED,
            RedFlag.FAINTED,
            HEART_RACED,
            RedFlag.FAINTED,
            LEG,
            RedFlag.ONE_LEG_SWELLING,
            HURT_BY_FALL,
            RedFlag.FALL_WITH_INJURY);

    static final List<DayRule> ALL = List.of(
            rule(CHEST, EMERGENCY, DOCTOR_TODAY, "NHS on heart attack; ACSM signs", PARTLY),
            rule(STROKE, EMERGENCY, DOCTOR_TODAY, "NHS on stroke signs", SEEN),
            rule(BREATH, DOCTOR_TODAY, NOT_TODAY, "ACSM; heart-failure guidance", SEEN),
            rule(FAINTED, DOCTOR_TODAY, NOT_TODAY, "ACSM signs; level from memory", PARTLY),
            rule(HEART_RACED, DOCTOR_TODAY, NOT_TODAY, "ACSM signs; level from memory", PARTLY),
            rule(LEG, DOCTOR_TODAY, NOT_TODAY, "NHS on clots in a vein", SEEN),
            rule(HURT_BY_FALL, DOCTOR_TODAY, NOT_TODAY, "a published fall triage list", SEEN),
            rule(FELL, LIGHT, LIGHT, "ours; the questions on falls are asked anew", DESIGN_CHOICE),
            rule(DIZZY, NOT_TODAY, NOT_TODAY, "ACSM signs; what is done is ours", PARTLY),
            rule(ILL, NOT_TODAY, NOT_TODAY, "BACR 2006, phase IV instructor manual", SEEN),
            rule(NEW_PAIN, LIGHT, LIGHT, "ours", DESIGN_CHOICE),
            rule(MEDICINE, LIGHT, LIGHT, "ours", DESIGN_CHOICE),
            rule(SLEPT_BADLY, LIGHT, LIGHT, "ours", DESIGN_CHOICE));

    private static DayRule rule(DaySign sign, Then yes, Then unknown, String citation, Known known) {
        Rule rule = new Rule("DAY-" + sign.name().replace('_', '-'), citation, known);
        return new DayRule(sign, yes, unknown, rule, Optional.ofNullable(BEYOND.get(sign)));
    }

    Finding raised() {
        return new Finding(rule, sign.words() + ".");
    }

    Finding unanswered() {
        return new Finding(rule, "Not known: " + sign.words() + ".");
    }

    Statement stated() {
        return Area.state(rule, Area.TODAY, "%s: %s; not known: %s.".formatted(sign.words(), yes.words, unknown.words));
    }
}
