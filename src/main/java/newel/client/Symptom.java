package newel.client;

/**
 * The nine signs and symptoms of the 2015 pre-participation screening (Riebe et al. 2015), in our own words. One swollen
 * leg is a clot sign and not among them: {@link RedFlag#ONE_LEG_SWELLING}.
 */
public enum Symptom implements Sign {
    CHEST_DISCOMFORT("SS1", "Pain or tightness in the chest, neck, jaw or arms that may come from the heart"),
    BREATHLESS_AT_REST("SS2", "Out of breath at rest or with hardly any effort"),
    DIZZY_OR_FAINT("SS3", "Dizzy, or fainted"),
    BREATHLESS_LYING("SS4", "Cannot breathe well lying flat, or wakes at night for breath"),
    ANKLE_SWELLING("SS5", "Both ankles swell"),
    PALPITATIONS("SS6", "Heart races, pounds or skips"),
    CALF_PAIN_WALKING("SS7", "Cramp in the legs on walking that goes on resting"),
    HEART_MURMUR("SS8", "Was told of a heart murmur"),
    UNUSUAL_TIREDNESS("SS9", "Far more tired or short of breath than usual from everyday things");

    private final String code;
    private final String words;

    Symptom(String code, String words) {
        this.code = code;
        this.words = words;
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public String words() {
        return words;
    }
}
