package newel.client;

/**
 * Measured at rest; null is not measured.
 *
 * @param oxygen saturation, percent
 * @param posturalDrop fall of the systolic pressure within 3 minutes of standing, mmHg
 * @param weightGainKg gained over 1 to 3 days, asked of people with heart failure
 * @param posturalDropLower fall of the diastolic pressure, likewise
 * @param symptoms feels it: light-headed, headache, sight changed, chest pain
 */
public record Vitals(
        Integer systolic,
        Integer diastolic,
        Integer restingPulse,
        Integer oxygen,
        Double temperatureC,
        Integer posturalDrop,
        Double weightGainKg,
        Answer symptoms,
        Integer posturalDropLower) {

    /** The fall of the lower pressure on standing was not measured. */
    public Vitals(
            Integer systolic,
            Integer diastolic,
            Integer restingPulse,
            Integer oxygen,
            Double temperatureC,
            Integer posturalDrop,
            Double weightGainKg,
            Answer symptoms) {
        this(systolic, diastolic, restingPulse, oxygen, temperatureC, posturalDrop, weightGainKg, symptoms, null);
    }

    public static Vitals notMeasured() {
        return new Vitals(null, null, null, null, null, null, null, Answer.UNKNOWN);
    }

    public static Vitals of(int systolic, int diastolic, int restingPulse) {
        return new Vitals(systolic, diastolic, restingPulse, null, null, null, null, Answer.UNKNOWN);
    }
}
