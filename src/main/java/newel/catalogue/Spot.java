package newel.catalogue;

import java.util.List;
import java.util.Locale;

/** Which movement or variant of which file is being read, and where flaws go. */
record Spot(String file, String id, List<Flaw> flaws) {
    void flaw(String what) {
        flaws.add(new Flaw(file, id, what));
    }

    /** The constant that a word such as `seated-back` names, or the fallback and a flaw. */
    <E extends Enum<E>> E constant(String where, String word, Class<E> type, E fallback) {
        for (E constant : type.getEnumConstants()) {
            if (constant.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(word)) {
                return constant;
            }
        }
        flaw(where + " does not know '" + word + "'");
        return fallback;
    }
}
