package newel.figure;

/**
 * Who is drawn. Only breadth, tones and hair differ: every look is drawn on the same skeleton, so that a pose is the same
 * pose on all of them.
 *
 * @param id what is stored
 * @param outfit number of the clothes in the style sheet
 */
public record Look(String id, Sex sex, Girth girth, Skin skin, Hair hair, boolean glasses, int outfit) {
    public enum Sex {
        WOMAN,
        MAN
    }

    /** The four tones of the style sheet, from light to dark. */
    public enum Skin {
        LIGHT,
        MEDIUM,
        BROWN,
        DARK
    }

    /** In plain words, for whoever chooses. */
    public String label() {
        String glass = glasses ? ", with glasses" : "";
        return "a " + girth.words(sex) + " with " + hair.words() + ", " + skinWords() + glass;
    }

    private String skinWords() {
        return switch (skin) {
            case LIGHT -> "light skin";
            case MEDIUM -> "medium skin";
            case BROWN -> "brown skin";
            case DARK -> "dark skin";
        };
    }

    /** Classes of the style sheet, which give the tones their colours. */
    public String style() {
        return "skin-" + (skin.ordinal() + 1) + " hair-" + (hair.tone().ordinal() + 1) + " outfit-" + outfit;
    }
}
