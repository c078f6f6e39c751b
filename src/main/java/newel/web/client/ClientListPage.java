package newel.web.client;

import java.util.List;

/** Everybody, those who need something first. */
public record ClientListPage(List<Line> needing, List<Line> others) {

    /**
     * @param about age and the like, in a few words
     * @param needs what the instructor has to do next, worst first; empty when nothing waits
     */
    public record Line(String path, String name, String about, List<Need> needs) {}

    /** @param look {@code stop}, {@code care} or {@code quiet} */
    public record Need(String look, String words) {}

    static ClientListPage of(List<Line> lines) {
        return new ClientListPage(
                lines.stream().filter(line -> !line.needs().isEmpty()).toList(),
                lines.stream().filter(line -> line.needs().isEmpty()).toList());
    }

    public boolean empty() {
        return needing.isEmpty() && others.isEmpty();
    }
}
