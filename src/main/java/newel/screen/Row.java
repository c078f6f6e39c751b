package newel.screen;

import static newel.screen.Row.Clearance.*;
import static newel.screen.Row.Says.*;

import java.util.Locale;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/**
 * The decision table of the 2015 pre-participation screening; the first row that matches decides.
 *
 * <p>Riebe D, Franklin BA, Thompson PD et al. 2015, Med Sci Sports Exerc 47:2473-2479.
 */
public enum Row {
    A1(NO, YES, ANY, ANY, RECOMMENDED, Intensity.LIGHT_TO_MODERATE),
    A2(NO, NO, YES, ANY, RECOMMENDED, Intensity.LIGHT_TO_MODERATE),
    A3(NO, NO, NO, ANY, NOT_NECESSARY, Intensity.LIGHT_TO_MODERATE),
    B1(YES, YES, ANY, ANY, STOP_AND_SEEK, Intensity.LIGHT_TO_MODERATE),
    B2(YES, NO, YES, NO, NOT_NECESSARY, Intensity.MODERATE),
    B2V(YES, NO, YES, YES, BEFORE_VIGOROUS, Intensity.MODERATE_OR_VIGOROUS),
    B3(YES, NO, NO, ANY, NOT_NECESSARY, Intensity.MODERATE_OR_VIGOROUS);

    static final String CITATION = "Riebe et al. 2015, Med Sci Sports Exerc 47:2473-2479";

    private final Says active;
    private final Says symptom;
    private final Says disease;
    private final Says vigorous;
    private final Clearance clearance;
    private final Intensity intensity;

    Row(Says active, Says symptom, Says disease, Says vigorous, Clearance clearance, Intensity intensity) {
        this.active = active;
        this.symptom = symptom;
        this.disease = disease;
        this.vigorous = vigorous;
        this.clearance = clearance;
        this.intensity = intensity;
    }

    public static Row first(boolean active, boolean symptom, boolean disease, boolean vigorous) {
        for (Row row : values()) {
            if (row.active.fits(active)
                    && row.symptom.fits(symptom)
                    && row.disease.fits(disease)
                    && row.vigorous.fits(vigorous)) {
                return row;
            }
        }
        throw new IllegalStateException("the table has a hole");
    }

    public Clearance clearance() {
        return clearance;
    }

    /** What may be done after the decision, and after the clearance where one is asked for. */
    public Intensity intensity() {
        return intensity;
    }

    public Rule rule() {
        return new Rule(code(), CITATION, Known.SEEN);
    }

    Statement stated() {
        return Area.state(
                rule(),
                Area.READINESS,
                "Used to exercise: %s; signs: %s; known disease: %s; wants hard work: %s. %s; then %s."
                        .formatted(
                                active.words(),
                                symptom.words(),
                                disease.words(),
                                vigorous.words(),
                                clearance.words(),
                                intensity.words()));
    }

    public String code() {
        return this == B2V ? "B2v" : name();
    }

    public enum Clearance {
        NOT_NECESSARY("No clearance is needed"),
        RECOMMENDED("A clinician's clearance first"),
        /** Moderate work goes on; vigorous work waits. */
        BEFORE_VIGOROUS("Moderate work goes on, a clinician's clearance before hard work"),
        STOP_AND_SEEK("Stop, and a clinician's clearance");

        private final String words;

        Clearance(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    enum Says {
        YES,
        NO,
        ANY;

        boolean fits(boolean fact) {
            return this == ANY || (this == YES) == fact;
        }

        String words() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
