package newel.assess;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import newel.client.Measured;
import newel.client.Quantity;
import newel.client.Sex;
import newel.client.WalkingSpeed;

/** Scores a result and holds it against every table that is applied, for this age and sex. */
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
        Judging judging = new Judging(judge, score(read, own), read.done());
        List<Verdict> verdicts = judge.tables().stream()
                .filter(table -> applied(table, judging))
                .map(table -> judging.by(table, age, sex))
                .toList();
        return new Result(own, measured, judging.score(), verdicts);
    }

    /** Stands with the help of the arms score 0 (CDC STEADI 2017). */
    private static Quantity score(Measured read, Guide guide) {
        boolean nothing = guide.asks(Asked.ARMS) && read.armsUsed() && !guide.lessIsBetter();
        return nothing ? new Quantity(BigDecimal.ZERO, read.result().unit()) : read.result();
    }

    private static boolean applied(Table table, Judging judging) {
        return switch (table) {
            case Norm norm -> true;
            case CutOff cutOff -> cutOff.applies();
            case Scale scale -> scale.applies() && !judging.failed();
        };
    }

    /** The verdicts for which a program begins with the easy forms. */
    static Stream<Verdict> easy(Result result) {
        return result.verdicts().stream().filter(Verdict::flagged).filter(verdict -> switch (verdict.table()) {
            case Norm norm -> norm.easy();
            case CutOff cutOff -> cutOff.easy();
            case Scale scale -> false;
        });
    }
}
