package newel.client;

/**
 * The twelve items of a published questionnaire on falls (Rubenstein LZ et al. 2011, J Safety Res 42:493-499; LOINC panel
 * 97874-2), in our own words. The points of each stand in the screening rules.
 */
public enum FallsItem implements Sign {
    FELL("52552-7", "Fell in the last 12 months"),
    AID("97875-9", "Uses a stick or frame, or was told to"),
    UNSTEADY("97876-7", "Is unsteady at times when walking"),
    FURNITURE("97877-5", "Reaches for furniture when walking at home"),
    WORRY("97878-3", "Worries about falling"),
    HANDS_TO_RISE("97879-1", "Needs the hands to get up from a chair"),
    KERB("97880-9", "Has trouble with a kerb or a high step"),
    RUSHES("97881-7", "Often has to rush to the toilet"),
    NUMB_FEET("97882-5", "Has lost some feeling in the feet"),
    LIGHT_HEADED_MEDICINE("97883-3", "Takes medicine that makes light-headed, or more tired than usual"),
    SLEEP_MEDICINE("97884-1", "Takes medicine for sleep or for mood"),
    LOW_MOOD("48527-6", "Often feels sad or low");

    private final String code;
    private final String words;

    FallsItem(String code, String words) {
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
