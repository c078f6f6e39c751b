package newel.client;

/** What makes a target pulse mislead, beside medicine that slows the pulse. */
public enum PulseGuard implements Sign {
    UNEVEN_RHYTHM("PG1", "An uneven heart rhythm, such as atrial fibrillation"),
    PACEMAKER("PG2", "A pacemaker or a defibrillator"),
    NERVE_DAMAGE("PG3", "Was told that nerve damage changes the pulse or blood pressure"),
    NEW_DOSE("PG4", "Medicine for heart or blood pressure is new or was changed lately");

    private final String code;
    private final String words;

    PulseGuard(String code, String words) {
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
