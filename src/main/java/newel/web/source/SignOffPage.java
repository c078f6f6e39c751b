package newel.web.source;

import java.util.List;
import java.util.Set;
import newel.web.form.Ask;
import newel.web.form.Faults;

/** @param ticked ids of rules that are ticked */
public record SignOffPage(
        List<SourcesPage.Subject> subjects,
        Set<String> ticked,
        boolean all,
        List<Ask> asks,
        Faults faults,
        int signed,
        int total) {
    public static final String RULES = "rules";
    public static final String EVERY = "every-rule";

    public boolean ticks(SourcesPage.Line line) {
        return ticked.contains(line.statement().rule().id());
    }
}
