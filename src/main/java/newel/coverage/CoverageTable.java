package newel.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The table as lines of text, then every gap with its explanation. */
public final class CoverageTable {
    public static List<String> lines(Coverage coverage) {
        int wide = coverage.rows().stream()
                .mapToInt(row -> row.name().length())
                .max()
                .orElse(0);
        List<String> lines = new ArrayList<>();
        lines.add(line(wide, "fitting variants", List.of(Served.values())));
        coverage.rows()
                .forEach(row -> lines.add(line(wide, row.name(), row.fitting().values())));
        lines.add("gaps: " + coverage.gaps().size());
        coverage.gaps().forEach(gap -> lines.add(gap.toString()));
        return lines;
    }

    private static String line(int wide, String name, Iterable<?> cells) {
        List<String> columns = new ArrayList<>();
        cells.forEach(cell -> columns.add(String.format(Locale.ROOT, "%10s", cell)));
        return String.format(Locale.ROOT, "%-" + wide + "s", name)
                + columns.stream().collect(Collectors.joining());
    }

    private CoverageTable() {}
}
