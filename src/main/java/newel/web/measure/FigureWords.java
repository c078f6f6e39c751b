package newel.web.measure;

import java.math.BigDecimal;
import newel.assess.CutOff;
import newel.assess.Norm;
import newel.assess.Row;
import newel.assess.Scale;
import newel.assess.Verdict;
import newel.client.Measure;
import newel.client.Quantity;
import newel.client.Sex;
import newel.client.Unit;

/** A published figure as the instructor reads it, with whom it holds for. */
record FigureWords(Measure measure) {

    String of(Verdict verdict) {
        return switch (verdict) {
            case Verdict.Placed placed -> range(placed.table(), placed.row());
            case Verdict.Judged judged -> cut(judged.table(), judged.row());
            case Verdict.Graded graded -> grades(graded.table());
            case Verdict.NoNorm none -> "No figure for this age; none is made up.";
        };
    }

    String range(Norm norm, Row row) {
        Unit other = measure.unit().other();
        String own = plain(row.worse()) + " to " + new Quantity(row.better(), measure.unit());
        String both = other == measure.unit()
                ? own
                : "%s, or %s to %s".formatted(own, in(other, row.worse()).number(), in(other, row.better()));
        return "%s (%s)%s".formatted(both, norm.spread(), whom(row));
    }

    String cut(CutOff cutOff, Row row) {
        return "Flagged %s %s%s".formatted(cutOff.compare().words(), quantity(row.worse()), whom(row));
    }

    String grades(Scale scale) {
        StringBuilder text = new StringBuilder();
        for (Scale.Grade grade : scale.grades()) {
            text.append(text.isEmpty() ? "" : "; ")
                    .append(grade.says().words())
                    .append(
                            grade.to() == null
                                    ? " beyond that"
                                    : (grade.included() ? " up to " : " under ") + quantity(grade.to()));
        }
        return first(text.toString()) + ".";
    }

    private String whom(Row row) {
        String sex = row.sex() == null ? "" : row.sex() == Sex.FEMALE ? "women " : "men ";
        String who = (sex + row.ages().text()).strip();
        String unsure = row.unsure() ? "; printed in more than one version" : "";
        return who.isEmpty() ? unsure : ", " + (sex.isEmpty() ? "ages " : "") + who + unsure;
    }

    /** In the published unit, with the other system's behind it where there is one. */
    private String quantity(BigDecimal figure) {
        Unit own = measure.unit();
        Quantity quantity = new Quantity(figure, own);
        return own.other() == own ? quantity.toString() : "%s, or %s".formatted(quantity, in(own.other(), figure));
    }

    private Quantity in(Unit other, BigDecimal figure) {
        return new Quantity(figure, measure.unit()).in(other).rounded(1);
    }

    private static String plain(BigDecimal figure) {
        return new Quantity(figure, Unit.POINTS).number();
    }

    private static String first(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
