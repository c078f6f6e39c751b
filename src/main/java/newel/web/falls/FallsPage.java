package newel.web.falls;

import java.util.List;
import newel.client.Measure;
import newel.screen.FallsPlan;
import newel.screen.FallsRisk;
import newel.screen.FallsScore;
import newel.source.Finding;
import newel.web.client.ClientHeader;
import newel.web.form.Ask;

/** Falls of one client: how the level came about, what it asks next, and the longer questionnaire. */
public record FallsPage(ClientHeader header, String base, String path, FallsRisk risk, FallsPlan plan, List<Ask> asks) {

    public String points() {
        FallsScore score = risk.score();
        String open = score.open() > 0 ? ", and up to " + score.open() + " more in the open items" : "";
        return score.asked() ? score.points() + " of " + FallsScore.MOST + open : "Not asked yet";
    }

    public List<String> measures() {
        return plan.measure().stream().map(Measure::words).toList();
    }

    public List<Finding> findings() {
        return java.util.stream.Stream.of(
                        risk.reasons(), risk.keyQuestions(), risk.score().findings(), plan.steps())
                .flatMap(List::stream)
                .distinct()
                .toList();
    }
}
