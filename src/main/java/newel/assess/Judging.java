package newel.assess;

import java.math.BigDecimal;
import newel.assess.Verdict.Place;
import newel.client.Done;
import newel.client.Quantity;
import newel.client.Sex;

/** Holds one score against one table, whether or not the table is applied to everybody. */
record Judging(Guide guide, Quantity score, Done done) {

    static Verdict by(Table table, Guide guide, BigDecimal score, int age, Sex sex) {
        return new Judging(guide, new Quantity(score, guide.measure().unit()), Done.AS_TOLD).by(table, age, sex);
    }

    Verdict by(Table table, int age, Sex sex) {
        return switch (table) {
            case Norm norm ->
                norm.row(age, sex)
                        .<Verdict>map(row -> new Verdict.Placed(norm, row, place(row)))
                        .orElse(new Verdict.NoNorm(norm));
            case CutOff cutOff ->
                cutOff.row(age, sex)
                        .<Verdict>map(row -> new Verdict.Judged(cutOff, row, beyond(cutOff, row)))
                        .orElse(new Verdict.NoNorm(cutOff));
            case Scale scale -> new Verdict.Graded(scale, scale.of(score.amount()));
        };
    }

    private Place place(Row row) {
        int better = guide.lessIsBetter() ? -1 : 1;
        if (failed() || better * compared(row.worse()) < 0) {
            return Place.BELOW;
        }
        return better * compared(row.better()) > 0 ? Place.ABOVE : Place.WITHIN;
    }

    private boolean beyond(CutOff cutOff, Row row) {
        return failed() || cutOff.compare().holds(compared(row.worse()));
    }

    /** What could not be done is worse than any figure; a timed rise with the arms is no rise (design choice). */
    boolean failed() {
        return done.unable() || guide.asks(Asked.ARMS) && done.armsUsed() && guide.lessIsBetter();
    }

    private int compared(BigDecimal figure) {
        return score.compareTo(new Quantity(figure, guide.measure().unit()));
    }
}
