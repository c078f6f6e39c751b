package newel.web.source;

import java.util.List;
import newel.practice.Standing;
import newel.source.Statement;

/**
 * @param known the one chosen, as written in the address; empty for all
 * @param total rules in the product
 * @param signed of these, how many are signed off
 */
public record SourcesPage(
        List<Filter> filters, List<Subject> subjects, String known, int total, int shown, int signed) {

    /** @param path where a press leads; the one that is chosen is marked */
    public record Filter(String words, int count, String path, boolean chosen) {}

    public record Subject(String name, String id, List<Line> lines) {}

    public record Line(Statement statement, Standing standing) {}
}
