package newel.screen;

import java.util.List;
import newel.source.Known;
import newel.source.Rule;

/** Which form of the world falls guidelines' path a practice follows. */
public enum FallsSet {
    AS_PUBLISHED(
            "World falls guidelines as published: up and go over 15 s, asked after a fall",
            new Rule("FALLS-AS-PUBLISHED", "Montero-Odasso et al. 2022, Age Ageing 51:afac205", Known.SEEN),
            15),
    /** Asked of everybody who is not at high risk already, fall or none. */
    WIDER(
            "Published variant: up and go over 10 s, asked of everybody not at high risk",
            new Rule("FALLS-WIDER", "Two simple modifications, 2024, Age Ageing afae192", Known.SEEN),
            10);

    private final String words;
    private final Rule rule;
    private final int upAndGoOver;

    FallsSet(String words, Rule rule, int upAndGoOver) {
        this.words = words;
        this.rule = rule;
        this.upAndGoOver = upAndGoOver;
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

    /** Seconds over 3 metres; slower than this is impaired in this form of the path and in no other rule. */
    int upAndGoOver() {
        return upAndGoOver;
    }
}
