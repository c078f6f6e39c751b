package newel.client;

/** What is asked at the door before a session, in our own words. What a yes calls for is said in the screening rules. */
public enum DaySign {
    CHEST("Pain or pressure in the chest, jaw or arm, now or since last time"),
    STROKE("Face, arm, speech or sight changed, or suddenly confused, even if it passed"),
    BREATH("More out of breath than usual, or breathless lying flat"),
    FAINTED("Fainted or collapsed"),
    HEART_RACED("The heart raced, pounded or skipped"),
    LEG("One leg newly swollen, warm or sore"),
    HURT_BY_FALL("A fall since last time that did harm, or moving less well since a fall"),
    FELL("Any other fall since last time"),
    DIZZY("Dizzy or light-headed today"),
    ILL("Fever, an infection, or feels ill"),
    NEW_PAIN("A new pain that nobody has looked at"),
    MEDICINE("Medicine is new or changed, or today's was not taken"),
    SLEPT_BADLY("Slept badly, or has hardly eaten or drunk");

    private final String words;

    DaySign(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
