package newel.web.client;

import java.util.Comparator;
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

    private static final List<String> ORDER = List.of("stop", "care", "quiet");

    static ClientListPage of(List<Line> lines) {
        return new ClientListPage(
                lines.stream()
                        .filter(line -> !line.needs().isEmpty())
                        .sorted(Comparator.comparingInt(ClientListPage::worst))
                        .toList(),
                lines.stream().filter(line -> line.needs().isEmpty()).toList());
    }

    /** Stop before care before the rest; among equals the order of the list stays. */
    private static int worst(Line line) {
        return line.needs().stream()
                .mapToInt(need -> ORDER.indexOf(need.look()))
                .min()
                .orElse(ORDER.size());
    }

    public boolean empty() {
        return needing.isEmpty() && others.isEmpty();
    }
}
