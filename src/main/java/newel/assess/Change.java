package newel.assess;

import java.math.BigDecimal;
import java.util.Optional;
import newel.client.Quantity;

/**
 * From one result to the next of the same test, done in the same way.
 *
 * @param by the newer score less the older, in the unit of the newer
 * @param size by the published meaningful change; empty where none is held, and then nothing is called meaningful
 */
public record Change(Result before, Result after, Way way, Quantity by, Optional<Size> size) {
    public enum Way {
        BETTER,
        WORSE,
        SAME
    }

    public enum Size {
        TOO_SMALL("less than a change that means something"),
        SMALL("a small change that means something"),
        SUBSTANTIAL("a substantial change");

        private final String words;

        Size(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    static Change of(Result before, Result after, Guide judge) {
        Quantity by = new Quantity(
                after.score()
                        .amount()
                        .subtract(before.score().in(after.score().unit()).amount()),
                after.score().unit());
        return new Change(
                before, after, way(before, after, judge), by, judge.meaningful().map(each -> size(each, by)));
    }

    /** Something that could be done at last is better, whatever it scores, and the other way round. */
    private static Way way(Result before, Result after, Guide judge) {
        boolean could = !before.measured().unable();
        boolean can = !after.measured().unable();
        int better =
                could == can ? after.score().compareTo(before.score()) * (judge.lessIsBetter() ? -1 : 1) : can ? 1 : -1;
        return better > 0 ? Way.BETTER : better < 0 ? Way.WORSE : Way.SAME;
    }

    private static Size size(Meaningful meaningful, Quantity by) {
        BigDecimal change = by.amount().abs();
        if (change.compareTo(meaningful.substantial()) >= 0) {
            return Size.SUBSTANTIAL;
        }
        return change.compareTo(meaningful.small()) >= 0 ? Size.SMALL : Size.TOO_SMALL;
    }
}
