package newel.assess;

import java.math.BigDecimal;
import java.util.List;
import newel.client.Sex;

/** What must hold of a test's figures, whatever they are. */
final class GuideChecks {
    private final Guide guide;
    private final Mapping node;

    private GuideChecks(Guide guide, Mapping node) {
        this.guide = guide;
        this.node = node;
    }

    static void check(Guide guide, Mapping node) {
        new GuideChecks(guide, node).check();
    }

    private void check() {
        if (guide.least().compareTo(guide.most()) >= 0) {
            node.fault("least is not under most");
        }
        if (guide.asks(Asked.SIDE) == guide.sides().isBlank()) {
            node.fault("asks for a side and does not say of what, or the other way round");
        }
        guide.norms().forEach(this::norm);
        guide.cutOffs().forEach(this::cutOff);
        guide.tables().forEach(this::rows);
    }

    private void norm(Norm norm) {
        for (Row row : norm.rows()) {
            int order = row.worse().compareTo(row.better());
            if (guide.lessIsBetter() ? order <= 0 : order >= 0) {
                fault(norm, "the ends of a range are the wrong way round: " + row.worse() + ", " + row.better());
            }
        }
    }

    private void cutOff(CutOff cutOff) {
        if (cutOff.compare().above() != guide.lessIsBetter()) {
            fault(cutOff, "it flags the better side");
        }
    }

    private void rows(Table table) {
        List<Row> rows = table.rows();
        for (int i = 0; i < rows.size(); i++) {
            row(table, rows.get(i));
            for (int j = 0; j < i; j++) {
                if (rows.get(i).overlaps(rows.get(j))) {
                    fault(table, "two rows hold for age " + rows.get(i).ages().from());
                }
            }
        }
        gaps(table);
    }

    private void row(Table table, Row row) {
        if (row.ages().from() > row.ages().to()) {
            fault(table, "ages run backwards: " + row.ages().text());
        }
        for (BigDecimal figure : List.of(row.worse(), row.better())) {
            if (figure.compareTo(guide.least()) < 0 || figure.compareTo(guide.most()) > 0) {
                fault(table, "a figure that nobody can score: " + figure);
            }
        }
    }

    /** Between the youngest and the oldest of a table, every age has a row for both sexes. */
    private void gaps(Table table) {
        int from =
                table.rows().stream().mapToInt(row -> row.ages().from()).min().orElse(0);
        int to = table.rows().stream().mapToInt(row -> row.ages().to()).max().orElse(-1);
        for (int age = from; age <= to; age++) {
            for (Sex sex : Sex.values()) {
                if (table.row(age, sex).isEmpty()) {
                    fault(table, "no row for age " + age);
                    return;
                }
            }
        }
    }

    private void fault(Table table, String what) {
        node.fault(table.rule().id() + ": " + what);
    }
}
