package newel.screen;

import java.util.List;
import newel.client.Client;
import newel.client.Disease;
import newel.client.ReadinessAnswers;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/** What the blood sugar allows, for people on insulin or on tablets that can make it too low. */
public sealed interface SugarToday {
    Rule HELPED = new Rule("SUGAR-HELPED", "Turner et al. 2019, Sports Med Open 5:20", Known.SEEN);
    Rule MISSING = new Rule("SUGAR-NOT-MEASURED", "what is not measured is not taken as good", Known.DESIGN_CHOICE);

    Finding finding();

    record Go(Finding finding) implements SugarToday {}

    /** Something first, then the session goes on. */
    record SugarFirst(Finding finding) implements SugarToday {}

    record ModerateAtMost(Finding finding) implements SugarToday {}

    /** Put right first: nobody has to be called, and it is measured again. */
    record NotYet(Finding finding) implements SugarToday {}

    record NotToday(Finding finding) implements SugarToday {}

    /** Asked of those who take such medicine, and of those with diabetes of whom nobody knows. */
    static boolean asked(Client client) {
        ReadinessAnswers answers = client.readiness();
        return answers.lowSugarMedicine().yes()
                || answers.lowSugarMedicine().unknown()
                        && answers.knownDisease().to(Disease.DIABETES).yes();
    }

    /** @param glucose null when it was not measured */
    static SugarToday of(Glucose glucose) {
        if (glucose == null) {
            return new NotYet(new Finding(MISSING, "Takes medicine that can make the sugar low: measure it first."));
        }
        if (glucose.helpedInADay().yesOrUnknown()) {
            return new NotToday(new Finding(
                    HELPED,
                    glucose.helpedInADay().yes()
                            ? "Needed help with a low sugar in the last 24 hours."
                            : "Not answered: help with a low sugar in the last 24 hours."));
        }
        return byBand(glucose, GlucoseBand.of(glucose));
    }

    private static SugarToday byBand(Glucose glucose, GlucoseBand band) {
        Finding finding = new Finding(band.rule(), "Blood sugar " + glucose.told() + ": " + band.says() + ".");
        return switch (band) {
            case VERY_LOW -> new NotToday(finding);
            case LOW -> glucose.alone().yesOrUnknown() ? new NotToday(finding) : new NotYet(finding);
            case SUGAR_FIRST, SUGAR_FROM_THE_START -> new SugarFirst(finding);
            case GOOD -> new Go(finding);
            case HIGH, VERY_HIGH ->
                switch (glucose.ketones()) {
                    case MODERATE_OR_LARGE -> new NotToday(finding);
                    case NOT_KNOWN -> new NotYet(finding);
                    case NONE_OR_TRACE -> new ModerateAtMost(finding);
                };
        };
    }

    static List<Statement> stated() {
        return List.of(
                Area.state(
                        HELPED, Area.SUGAR, "A low sugar in the last 24 hours that needed another person: none today."),
                Area.state(MISSING, Area.SUGAR, "Insulin or such tablets and no figure: measure before the start."),
                Area.state(
                        new Rule("SUGAR-KETONES", "blood ketones", Known.FROM_MEMORY),
                        Area.SUGAR,
                        "Ketones of 1.5 mmol/L or more in blood count as moderate or large: no exercise."),
                Area.state(
                        new Rule("SUGAR-OLDER", "ADA and ACSM before 2016", Known.SEEN),
                        Area.SUGAR,
                        "Older lines, not used: avoid over 250 mg/dL (13.9) with ketosis, caution over 300 (16.7) without,"
                                + " add carbohydrate under 100 (5.6)."));
    }
}
