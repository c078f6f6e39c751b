package newel.screen;

import static newel.client.RedFlag.*;
import static newel.client.Symptom.*;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import newel.client.Answer;
import newel.client.ReadinessAnswers;
import newel.client.RedFlag;
import newel.client.Symptom;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/**
 * Signs that mean more together than one by one.
 *
 * @param becomes the emergency that they are together
 */
record Combination(Rule rule, String says, RedFlag becomes, Predicate<Told> holds) {

    /** What was answered yes, and whether a very high pressure is felt. */
    record Told(Set<RedFlag> flags, Set<Symptom> signs, Answer felt) {
        static Told of(ReadinessAnswers answers, Answer felt) {
            return new Told(
                    answers.redFlags().all(RedFlag.class, Answer.YES),
                    answers.symptoms().all(Symptom.class, Answer.YES),
                    felt);
        }

        boolean flag(RedFlag... any) {
            return List.of(any).stream().anyMatch(flags::contains);
        }

        boolean sign(Symptom... any) {
            return List.of(any).stream().anyMatch(signs::contains);
        }
    }

    static final List<Combination> ALL = List.of(
            new Combination(
                    new Rule("E2+D1", "NHS on clots in a vein", Known.SEEN),
                    "One leg swollen and any breathlessness or chest pain: an emergency.",
                    SUDDEN_BREATHLESSNESS,
                    told -> told.flag(ONE_LEG_SWELLING)
                            && (told.flag(NEW_BREATHLESSNESS, CHANGED_ANGINA, HEART_NOT_SETTLED)
                                    || told.sign(
                                            BREATHLESS_AT_REST,
                                            BREATHLESS_LYING,
                                            UNUSUAL_TIREDNESS,
                                            CHEST_DISCOMFORT))),
            new Combination(
                    new Rule("E2+D5", "NHS on clots in a vein", Known.SEEN),
                    "New breathlessness and chest pain: an emergency.",
                    SUDDEN_BREATHLESSNESS,
                    told -> told.flag(NEW_BREATHLESSNESS) && (told.flag(CHANGED_ANGINA) || told.sign(CHEST_DISCOMFORT))
                            || told.flag(CHANGED_ANGINA) && told.sign(BREATHLESS_AT_REST)),
            new Combination(
                    new Rule("E4+D7", "ESC syncope guideline 2018; which answers count is ours", Known.FROM_MEMORY),
                    "Fainted, with chest pain or a racing heart: an emergency.",
                    COLLAPSE_ON_EFFORT,
                    told -> told.flag(FAINTED)
                            && (told.flag(CHANGED_ANGINA)
                                    || told.sign(CHEST_DISCOMFORT)
                                    || told.sign(DIZZY_OR_FAINT) && told.sign(PALPITATIONS))),
            new Combination(
                    new Rule("E11+D2", "AHCPR; UK spinal pathway; which answers count is ours", Known.PARTLY),
                    "Fever or a hot joint, and breathless at rest: an emergency.",
                    FEVER_AND_CONFUSED,
                    told -> told.flag(FEVER_WITH_PAIN)
                            && (told.flag(NEW_BREATHLESSNESS) || told.sign(BREATHLESS_AT_REST))));

    /** The emergency form of D8, whose rule is its own flag and not another one. */
    static final Statement FELT_PRESSURE = Area.state(
            new Rule("D8+felt", "ESC/ESH; that unknown counts as felt is ours", Known.FROM_MEMORY),
            Area.RED_FLAGS,
            "Blood pressure of 180/110 or more that is felt (headache, sight, chest), or nobody knows: an emergency.");

    /** Very high pressure was told of, and it is felt, or nobody asked. */
    static boolean feltPressure(Told told) {
        return told.flag(VERY_HIGH_PRESSURE)
                && (told.felt().yesOrUnknown()
                        || told.sign(CHEST_DISCOMFORT, BREATHLESS_AT_REST)
                        || told.flag(CHANGED_ANGINA, NEW_BREATHLESSNESS));
    }

    Statement stated() {
        return Area.state(rule, Area.RED_FLAGS, says);
    }
}
