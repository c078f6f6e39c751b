package newel.screen;

import java.util.List;
import newel.source.Known;
import newel.source.Rule;

/** Where the zones of the pain-monitoring model lie, 0 to 10. Over 5 is too much in both forms. */
public enum PainZones {
    LOWER(
            "Up to 2 is safe, over 2 to 5 is acceptable",
            new Rule("PAIN-ZONES-LOWER", "Thomee 1997, Phys Ther 77:1690-1703", Known.FROM_MEMORY),
            2),
    HIGHER(
            "Up to 3 is safe, over 3 to 5 is acceptable",
            new Rule("PAIN-ZONES-HIGHER", "after Silbernagel et al. 2007, Am J Sports Med 35:897-906", Known.SEEN),
            3);

    /** Over this is too much (both forms). */
    static final int MOST = 5;

    private final String words;
    private final Rule rule;
    private final int safeAtMost;

    PainZones(String words, Rule rule, int safeAtMost) {
        this.words = words;
        this.rule = rule;
        this.safeAtMost = safeAtMost;
    }

    public String words() {
        return words;
    }

    public Rule rule() {
        return rule;
    }

    public List<Rule> rules() {
        return List.of(rule);
    }

    int safeAtMost() {
        return safeAtMost;
    }
}
