package newel.screen;

import java.math.BigDecimal;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/** Formulas for the highest pulse at an age, in beats a minute; exact decimals, never rounded here. */
public enum MaxPulse {
    TANAKA(
            "208",
            "0.7",
            "Tanaka et al. 2001, J Am Coll Cardiol 37:153-156",
            Known.SEEN,
            "208 - 0.7 x age; what Newel uses."),
    GELLISH(
            "207",
            "0.7",
            "Gellish et al. 2007, Med Sci Sports Exerc 39:822-829",
            Known.FROM_MEMORY,
            "207 - 0.7 x age."),
    GELLISH_FITTED(
            "206.9", "0.67", "Gellish et al. 2007, Med Sci Sports Exerc 39:822-829", Known.SEEN, "206.9 - 0.67 x age."),
    OLD(
            "220",
            "1",
            "Fox 1971; Robergs and Landwehr 2002 on its error",
            Known.SEEN,
            "220 - age; too low in older people, not used."),
    /** For a clinician only: never the base of a target that Newel shows. */
    ON_BETA_BLOCKER(
            "164",
            "0.7",
            "Brawner et al. 2004, Am Heart J 148:910-914 (attribution from memory)",
            Known.PARTLY,
            "164 - 0.7 x age on a beta-blocker; only when a clinician agrees, not shown.");

    private final BigDecimal atBirth;
    private final BigDecimal aYear;
    private final Rule rule;
    private final String says;

    MaxPulse(String atBirth, String aYear, String citation, Known known, String says) {
        this.atBirth = new BigDecimal(atBirth);
        this.aYear = new BigDecimal(aYear);
        this.rule = new Rule("MAX-PULSE-" + name().replace('_', '-'), citation, known);
        this.says = says;
    }

    public BigDecimal at(int age) {
        return atBirth.subtract(aYear.multiply(BigDecimal.valueOf(age)));
    }

    public Rule rule() {
        return rule;
    }

    Statement stated() {
        return Area.state(rule, Area.EFFORT, "Highest pulse: " + says);
    }
}
