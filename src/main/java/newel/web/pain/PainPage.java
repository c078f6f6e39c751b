package newel.web.pain;

import java.util.List;
import newel.source.Finding;
import newel.web.client.ClientHeader;
import newel.web.form.Ask;
import newel.web.form.Faults;

/**
 * Pain that was logged, the newest first, and the form for one more.
 *
 * @param morning an earlier log whose next morning was typed and cannot be used, empty for none
 */
public record PainPage(
        ClientHeader header,
        String path,
        String zones,
        List<Line> lines,
        List<Ask> asks,
        Faults faults,
        String morning,
        String typedMorning) {

    /**
     * @param waits the next morning is not told yet
     * @param emergency the number comes before anything else
     */
    public record Line(
            String id,
            String day,
            String where,
            String figures,
            String tone,
            String words,
            Finding finding,
            boolean waits,
            boolean emergency) {}

    public List<Finding> findings() {
        return lines.stream().map(Line::finding).distinct().toList();
    }
}
