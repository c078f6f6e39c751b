package newel.figure;

/** What a surface is; the style sheet gives it its colour. */
public enum Tone {
    SKIN,
    SKIN_FAR,
    HAIR,
    SHIRT,
    SHIRT_FAR,
    TROUSERS,
    TROUSERS_FAR,
    SHOE,
    FACE,
    WOOD,
    WOOD_DARK,
    TOWEL,
    COUNTER,
    COUNTER_TOP,
    WALL,
    BED,
    PILLOW,
    STEP,
    BAG,
    BAND,
    FLOOR,
    SHADOW,
    GHOST,
    ARROW;

    /** Name in the style sheet. */
    public String style() {
        return name().toLowerCase().replace('_', '-');
    }
}
