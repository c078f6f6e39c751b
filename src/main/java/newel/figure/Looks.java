package newel.figure;

import static newel.figure.Girth.BROAD;
import static newel.figure.Girth.MIDDLE;
import static newel.figure.Girth.SLIM;
import static newel.figure.Hair.Cut.BALD;
import static newel.figure.Hair.Cut.BOB;
import static newel.figure.Hair.Cut.BUN;
import static newel.figure.Hair.Cut.SHORT;
import static newel.figure.Hair.Tint.DARK;
import static newel.figure.Hair.Tint.GREY;
import static newel.figure.Hair.Tint.WHITE;
import static newel.figure.Look.Sex.MAN;
import static newel.figure.Look.Sex.WOMAN;

import java.util.List;
import java.util.Optional;

/** The people who are drawn. A new one may be added; an id is stored and stays. */
public final class Looks {
    private static final List<Look> ALL = List.of(
            new Look("ana", WOMAN, MIDDLE, Look.Skin.MEDIUM, new Hair(GREY, BUN), false, 1),
            new Look("ben", MAN, BROAD, Look.Skin.LIGHT, new Hair(GREY, BALD), true, 2),
            new Look("cora", WOMAN, BROAD, Look.Skin.DARK, new Hair(WHITE, SHORT), false, 4),
            new Look("dev", MAN, SLIM, Look.Skin.BROWN, new Hair(WHITE, SHORT), true, 3),
            new Look("elsa", WOMAN, SLIM, Look.Skin.LIGHT, new Hair(DARK, BOB), true, 2),
            new Look("femi", MAN, MIDDLE, Look.Skin.DARK, new Hair(GREY, BALD), false, 4),
            new Look("gita", WOMAN, MIDDLE, Look.Skin.BROWN, new Hair(DARK, BUN), false, 3),
            new Look("hugo", MAN, MIDDLE, Look.Skin.MEDIUM, new Hair(WHITE, SHORT), false, 1));

    public static List<Look> all() {
        return ALL;
    }

    public static Optional<Look> of(String id) {
        return ALL.stream().filter(look -> look.id().equals(id)).findFirst();
    }

    /** Who was chosen; one of all when nobody was, or when the id is of none. */
    public static Look chosen(String id, String word) {
        return of(id).orElseGet(() -> spread(word));
    }

    /** One of all, always the same for the same word, so that a catalogue shows everyone. */
    public static Look spread(String word) {
        return ALL.get(Math.floorMod(word.hashCode(), ALL.size()));
    }

    private Looks() {}
}
