package newel.web.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import newel.assess.Guides;
import newel.compose.Statements;
import newel.limit.Preset;
import newel.limit.Presets;
import newel.practice.Rulebook;
import newel.referral.Due;
import newel.screen.Rules;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;
import newel.web.limitation.MotionWords;

/** The rules that are shipped, each package's own in its own words. */
public final class Shipped {

    public static Rulebook rulebook(Presets presets) {
        return Rulebook.of(
                Rules.all(), Guides.shipped().statements(), presets(presets), Due.statements(), Statements.all());
    }

    private static List<Statement> presets(Presets presets) {
        List<Statement> all = new ArrayList<>();
        presets.all().forEach(preset -> all.addAll(restrictions(preset)));
        return all;
    }

    private static List<Statement> restrictions(Preset preset) {
        List<Statement> all = new ArrayList<>();
        for (Preset.Restriction each : preset.restrictions()) {
            Rule rule = new Rule(preset.id() + "-" + (all.size() + 1), each.source(), known(each.how()));
            all.add(new Statement(rule, "Limits: " + preset.name(), MotionWords.of(each.limit()) + "."));
        }
        return all;
    }

    /** As it is written in the file of presets: "from memory". */
    private static Known known(String how) {
        return how.equals("seen")
                ? Known.SEEN
                : Known.valueOf(how.toUpperCase(Locale.ROOT).replace(' ', '_'));
    }

    private Shipped() {}
}
