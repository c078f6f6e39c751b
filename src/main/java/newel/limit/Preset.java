package newel.limit;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/**
 * What a condition usually restricts. Every restriction names its source; orders of the client's own clinician stand above
 * all of it.
 *
 * @param name in plain words, to choose from
 * @param spoken what a sentence calls it, "{side}" standing for left or right; the id where that reads well
 * @param sided whether it is about one side
 * @param weeks usual time until it is looked at again, 0 where it lasts
 * @param advice for the instructor
 * @param cautions for the client, on papers
 */
public record Preset(
        String id,
        String name,
        String spoken,
        boolean sided,
        int weeks,
        List<Restriction> restrictions,
        List<String> advice,
        List<String> cautions) {

    /** @param how seen, from memory, common practice or design choice */
    public record Restriction(Limit limit, String source, String how) {}

    public List<Limit> limits(Sided side) {
        return restrictions.stream().map(each -> on(each.limit(), side)).toList();
    }

    /** What a sentence calls it: "stroke, weaker left side". */
    String spoken(Sided side) {
        return side == Sided.BOTH
                ? spoken.replace("{side} ", "")
                : spoken.replace("{side}", side.name().toLowerCase(Locale.ROOT));
    }

    /** Whether its spoken name tells the side. */
    boolean tellsSide() {
        return spoken.contains("{side}");
    }

    private Limit on(Limit limit, Sided side) {
        return sided && limit instanceof Limit.OfSide ofSide ? ofSide.on(side) : limit;
    }

    /** @param words what was said; the preset's name when empty */
    public Limitation limitation(
            String limitationId,
            String words,
            Sided side,
            Limitation.Source source,
            LocalDate since,
            LocalDate review) {
        String said = words.isBlank() ? name : words.strip();
        return new Limitation(limitationId, id, said, side, source, since, review, limits(side), cautions);
    }
}
