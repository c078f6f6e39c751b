package newel.assess;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import newel.assess.Verdict.Place;
import newel.client.Measured;
import newel.client.Quantity;
import newel.client.Sex;
import newel.client.WalkingSpeed;

/** Scores a result and holds it against every table for this age and sex. */
public final class Assessing {
    private final Guides guides;

    public Assessing(Guides guides) {
        this.guides = guides;
    }

    /** @param age on the day of the test */
    public Result of(Measured measured, int age, Sex sex) {
        Guide own = guides.of(measured.measure());
        Guide judge = guides.of(own.readAs());
        Measured read = own == judge ? measured : WalkingSpeed.of(measured);
        Quantity score = score(read, own);
        List<Verdict> verdicts = judge.tables().stream()
                .flatMap(table -> verdict(table, judge, read, score, age, sex).stream())
                .toList();
        return new Result(own, measured, score, verdicts);
    }

    /** A stand with the help of the arms scores 0 (CDC STEADI 2017); so does what could not be done, unless less is better. */
    private static Quantity score(Measured read, Guide guide) {
        boolean nothing = guide.asks(Asked.ARMS) && read.armsUsed() && !guide.lessIsBetter();
        return nothing ? new Quantity(BigDecimal.ZERO, read.result().unit()) : read.result();
    }

    private static Optional<Verdict> verdict(
            Table table, Guide guide, Measured read, Quantity score, int age, Sex sex) {
        return switch (table) {
            case Norm norm ->
                Optional.of(norm.row(age, sex)
                        .<Verdict>map(row -> new Verdict.Placed(norm, row, place(row, guide, read, score)))
                        .orElse(new Verdict.NoNorm(norm)));
            case CutOff cutOff ->
                Optional.of(cutOff)
                        .filter(CutOff::applies)
                        .map(each -> each.row(age, sex)
                                .<Verdict>map(
                                        row -> new Verdict.Judged(each, row, beyond(each, row, guide, read, score)))
                                .orElse(new Verdict.NoNorm(each)));
            case Scale scale ->
                Optional.of(scale)
                        .filter(each -> each.applies() && !failed(guide, read))
                        .map(each -> new Verdict.Graded(each, each.of(score.amount())));
        };
    }

    private static Place place(Row row, Guide guide, Measured read, Quantity score) {
        if (failed(guide, read)) {
            return Place.BELOW;
        }
        int better = guide.lessIsBetter() ? -1 : 1;
        if (better * compared(score, row.worse(), guide) < 0) {
            return Place.BELOW;
        }
        return better * compared(score, row.better(), guide) > 0 ? Place.ABOVE : Place.WITHIN;
    }

    private static boolean beyond(CutOff cutOff, Row row, Guide guide, Measured read, Quantity score) {
        return failed(guide, read) || cutOff.compare().holds(compared(score, row.worse(), guide));
    }

    /** What could not be done is worse than any figure; a timed rise with the arms is no rise (design choice). */
    private static boolean failed(Guide guide, Measured read) {
        return read.unable() || guide.asks(Asked.ARMS) && read.armsUsed() && guide.lessIsBetter();
    }

    private static int compared(Quantity score, BigDecimal figure, Guide guide) {
        return score.compareTo(new Quantity(figure, guide.measure().unit()));
    }

    static Stream<Verdict> easy(Result result) {
        return result.verdicts().stream().filter(Verdict::flagged).filter(verdict -> switch (verdict.table()) {
            case Norm norm -> norm.easy();
            case CutOff cutOff -> cutOff.easy();
            case Scale scale -> false;
        });
    }
}
