package newel.web.source;

import java.util.ArrayList;
import java.util.List;
import newel.screen.FallsSet;
import newel.screen.PainZones;
import newel.screen.RedFlagRule;
import newel.screen.RestSet;
import newel.screen.Row;
import newel.source.Statement;

final class ScreenStatements {
    static List<Statement> all() {
        List<Statement> all = new ArrayList<>();
        for (Row row : Row.values()) {
            all.add(new Statement(
                    row.rule(),
                    "Readiness",
                    row.clearance() + ", then " + row.intensity().words() + "."));
        }
        for (RedFlagRule each : RedFlagRule.ALL) {
            all.add(new Statement(
                    each.rule(),
                    "Signs asked first",
                    each.flag().words() + ": " + each.urgency().words() + "."));
        }
        for (RestSet each : RestSet.values()) {
            all.add(new Statement(each.rule(), "Pressure and pulse at rest", each.words() + "."));
        }
        for (FallsSet each : FallsSet.values()) {
            all.add(new Statement(each.rule(), "Risk of falls", each.words() + "."));
        }
        for (PainZones each : PainZones.values()) {
            all.add(new Statement(each.rule(), "Pain in exercise", each.words() + "."));
        }
        return all;
    }

    private ScreenStatements() {}
}
