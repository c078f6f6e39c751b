package newel.screen;

import static newel.source.Known.*;

import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/** What stops a session while it runs, in our own words. */
public enum StopSign {
    CHEST(
            "ST1",
            "Pain or pressure in the chest, or what this person knows as their heart pain",
            "ACSM general indications",
            SEEN,
            Then.EMERGENCY_IF_IT_STAYS),
    PRESSURE_FALLS(
            "ST2", "Upper pressure falls by 10 mmHg or more as the work gets harder", "ACSM", SEEN, Then.DOCTOR_TODAY),
    PRESSURE_HIGH("ST3", "Pressure over 250 upper or over 115 lower", "ACSM; AHA", SEEN, Then.DOCTOR_TODAY),
    BREATH_OR_LEGS(
            "ST4", "Far too short of breath for the work, wheezing, or cramp in the legs", "ACSM", SEEN, Then.REST),
    POOR_BLOOD_FLOW(
            "ST5",
            "Light-headed, confused, unsteady, grey or blue, sick, cold and clammy",
            "ACSM; that it is an emergency is ours",
            SEEN,
            Then.EMERGENCY),
    PULSE_DOES_NOT_RISE(
            "ST6",
            "The pulse does not rise with the work, without medicine that holds it down",
            "ACSM",
            SEEN,
            Then.DOCTOR_TODAY),
    RHYTHM("ST7", "The rhythm of the heart changes", "ACSM", SEEN, Then.DOCTOR_TODAY),
    ASKS("ST8", "The client asks to stop", "ACSM", SEEN, Then.REST),
    SPENT("ST9", "Very tired, by looks or by words", "ACSM", FROM_MEMORY, Then.REST),
    OXYGEN("ST10", "Oxygen under 88 % while training", "Australian pulmonary rehabilitation toolkit", SEEN, Then.REST),
    OXYGEN_WALK(
            "ST11",
            "Oxygen under 80 % in a 6-minute walk",
            "Holland et al. 2014, Eur Respir J 44:1428-1446",
            FROM_MEMORY,
            Then.REST),
    NEAR_ANGINA(
            "ST12",
            "Pulse within 10 beats of where the heart pain is known to begin",
            "Colberg et al. 2016, Diabetes Care 39:2065-2079",
            SEEN,
            Then.REST),
    STROKE_SIGNS(
            "ST13",
            "Sudden weakness of one side, the face or speech changes",
            "Colberg et al. 2016; NHS on stroke signs",
            SEEN,
            Then.EMERGENCY);

    /** What is done when it is seen. */
    public enum Then {
        EMERGENCY("stop, call the emergency number"),
        EMERGENCY_IF_IT_STAYS("stop; call the emergency number if it does not go within minutes"),
        DOCTOR_TODAY("stop, a doctor today"),
        REST("stop and rest; start again only when it has gone");

        private final String words;

        Then(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    private final String code;
    private final String words;
    private final Rule rule;
    private final Then then;

    StopSign(String code, String words, String citation, Known known, Then then) {
        this.code = code;
        this.words = words;
        this.rule = new Rule(code, citation, known);
        this.then = then;
    }

    public String code() {
        return code;
    }

    public String words() {
        return words;
    }

    public Rule rule() {
        return rule;
    }

    public Then then() {
        return then;
    }

    Statement stated() {
        return Area.state(rule, Area.STOP, words + ": " + then.words() + ".");
    }
}
