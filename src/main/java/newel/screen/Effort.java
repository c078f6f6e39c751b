package newel.screen;

import java.math.BigDecimal;
import java.util.Arrays;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/**
 * How hard work is, on every scale that is in use. Bounds are the lowest value of each band; the band runs to just under the
 * next one.
 *
 * <p>Garber CE et al. 2011, Med Sci Sports Exerc 43:1334-1359 (two copies differ on whether near the limit begins at 95 or 96 %
 * of the highest pulse; 96 here). The scale from 0 to 10 is of effort (Nelson et al. 2007, Circulation 116:1094), not the
 * ratio scale CR10: the same number means different things on them. Scale values and talk from memory.
 */
public enum Effort {
    VERY_LIGHT(bounds(0, 0, 6, "0", "0", 0), "very light", "could sing"),
    LIGHT(bounds(30, 57, 9, "2.0", "2", 3), "light", "talks with ease and could sing"),
    MODERATE(bounds(40, 64, 12, "3.0", "3", 5), "moderate", "can talk but not sing"),
    VIGOROUS(bounds(60, 77, 14, "6.0", "5", 7), "hard", "a few words, then a breath"),
    NEAR_LIMIT(bounds(90, 96, 18, "8.8", "8", 9), "near the limit", "cannot talk");

    /** @param rpe on the scale from 6 to 20 @param cr10 on the ratio scale @param effort on the scale from 0 to 10 */
    record Bounds(int reserve, int highest, int rpe, BigDecimal met, BigDecimal cr10, int effort) {}

    /** How the client talks while working. */
    public enum Talk {
        SINGS,
        TALKS_NOT_SINGS,
        FEW_WORDS,
        NO_TALK
    }

    private static final String CITATION = "Garber et al. 2011, Med Sci Sports Exerc 43:1334-1359";

    private final Bounds from;
    private final String words;
    private final String talk;

    Effort(Bounds from, String words, String talk) {
        this.from = from;
        this.words = words;
        this.talk = talk;
    }

    private static Bounds bounds(int reserve, int highest, int rpe, String met, String cr10, int effort) {
        return new Bounds(reserve, highest, rpe, new BigDecimal(met), new BigDecimal(cr10), effort);
    }

    public String words() {
        return words;
    }

    /** What the client can still say. */
    public String talk() {
        return talk;
    }

    /** Lowest percent of the pulse reserve. */
    public int reserveFrom() {
        return from.reserve();
    }

    /** Lowest percent of the highest pulse. */
    public int highestFrom() {
        return from.highest();
    }

    /** Highest whole percent of the pulse reserve that still belongs to the band. */
    public int reserveTo() {
        return this == NEAR_LIMIT ? 100 : next().from.reserve() - 1;
    }

    public int highestTo() {
        return this == NEAR_LIMIT ? 100 : next().from.highest() - 1;
    }

    /** First number of the band on the scale from 0 to 10. */
    public int scaleFrom() {
        return from.effort();
    }

    public int scaleTo() {
        return this == NEAR_LIMIT ? 10 : next().from.effort() - 1;
    }

    private String scale() {
        return scaleFrom() + " to " + scaleTo();
    }

    private Effort next() {
        return values()[ordinal() + 1];
    }

    /** On the scale from 6 to 20. */
    public static Effort ofRpe(int rating) {
        return last(band -> rating >= band.from.rpe());
    }

    /** On the ratio scale, where 3 is moderate and 5 is already hard. */
    public static Effort ofCr10(BigDecimal rating) {
        return last(band -> rating.compareTo(band.from.cr10()) >= 0);
    }

    /** On the scale of effort from 0 to 10, where 5 is moderate and 7 is hard. */
    public static Effort ofScale(int rating) {
        return last(band -> rating >= band.from.effort());
    }

    public static Effort ofReserve(BigDecimal percent) {
        return last(band -> percent.compareTo(BigDecimal.valueOf(band.from.reserve())) >= 0);
    }

    public static Effort ofTalk(Talk talk) {
        return switch (talk) {
            case SINGS -> LIGHT;
            case TALKS_NOT_SINGS -> MODERATE;
            case FEW_WORDS -> VIGOROUS;
            case NO_TALK -> NEAR_LIMIT;
        };
    }

    private static Effort last(java.util.function.Predicate<Effort> reached) {
        return Arrays.stream(values()).filter(reached).reduce(VERY_LIGHT, (one, next) -> next);
    }

    Statement stated() {
        return Area.state(
                new Rule("EFFORT-" + name().replace('_', '-'), CITATION, Known.PARTLY),
                Area.EFFORT,
                "%s: %d to %d %% of the pulse reserve, %d to %d %% of the highest pulse, from %d on the scale 6 to 20, %s on the scale 0 to 10; %s."
                        .formatted(
                                words,
                                reserveFrom(),
                                reserveTo(),
                                highestFrom(),
                                highestTo(),
                                from.rpe(),
                                scale(),
                                talk));
    }
}
