package newel.figure;

/** What a surface is; the style sheet gives it its colour. */
public enum Tone {
    SKIN,
    SKIN_FAR,
    CREASE,
    HAIR,
    HAIR_LINE,
    BROW,
    SHIRT,
    SHIRT_FAR,
    TROUSERS,
    TROUSERS_FAR,
    SHOE,
    FACE,
    WOOD,
    WOOD_DARK,
    WOOD_EDGE,
    TOWEL,
    TOWEL_EDGE,
    COUNTER,
    COUNTER_TOP,
    COUNTER_LINE,
    WORKTOP,
    METAL,
    WALL,
    SKIRTING,
    FRAME,
    BED,
    BED_EDGE,
    PILLOW,
    STEP,
    STEP_EDGE,
    STEP_TOP,
    CUSHION,
    CUSHION_TOP,
    BAG,
    BAND,
    BOTTLE,
    BOTTLE_CAP,
    PAPER,
    TAPE,
    FLOOR,
    SHADOW,
    GHOST,
    GHOST_EDGE,
    ARROW;

    /** Name in the style sheet. */
    public String style() {
        return name().toLowerCase().replace('_', '-');
    }
}
