package newel.figure;

/** Hair as it is drawn. */
public record Hair(Tint tone, Cut cut) {
    /** The tones of the style sheet, from light to dark. */
    public enum Tint {
        WHITE,
        GREY,
        DARK
    }

    public enum Cut {
        BALD,
        SHORT,
        BOB,
        BUN
    }

    String words() {
        String tint = switch (tone) {
            case WHITE -> "white hair";
            case GREY -> "grey hair";
            case DARK -> "dark grey hair";
        };
        return switch (cut) {
            case BALD -> "a bald head and " + tint + " at the sides";
            case SHORT -> "short " + tint;
            case BOB -> tint + " to the chin";
            case BUN -> tint + " in a bun";
        };
    }
}
