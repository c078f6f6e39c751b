package newel.web;

import java.util.List;
import java.util.Optional;
import newel.practice.Rulebook;
import newel.practice.Settings;
import newel.practice.SignOffs;
import newel.practice.Standing;
import newel.source.Rule;
import newel.store.Stores;

/** The practice as it stands around every page: who it is, whom it calls in an emergency, and where its rules stand. */
public final class Around {
    private final Optional<Settings> settings;
    private final Stores stores;
    private final Rulebook rulebook;
    /** Read only by pages that show a rule. */
    private SignOffs signOffs;

    private Around(Optional<Settings> settings, Stores stores, Rulebook rulebook) {
        this.settings = settings;
        this.stores = stores;
        this.rulebook = rulebook;
    }

    static Around of(Stores stores, Rulebook rulebook) {
        return new Around(stores.practice().settings(), stores, rulebook);
    }

    public Optional<Settings> settings() {
        return settings;
    }

    public String name() {
        return settings.map(Settings::name).orElse("Your practice");
    }

    /** What to call first, for the end of a sentence: "call 999". */
    public String emergencyCall() {
        return settings.map(each -> "call " + each.country().emergencyNumber()).orElse("call an ambulance");
    }

    public Standing standing(Rule rule) {
        if (signOffs == null) {
            signOffs = stores.signOffs().all();
        }
        return rulebook.standing(rule, signOffs);
    }

    /** Where several rules stand that one result rests on: each different word once. */
    public List<Standing> standings(List<Rule> rules) {
        return rules.stream().map(this::standing).distinct().toList();
    }
}
