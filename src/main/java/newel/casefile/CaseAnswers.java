package newel.casefile;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import newel.client.Answer;
import newel.client.Disease;
import newel.client.FallsAnswers;
import newel.client.FallsItem;
import newel.client.PulseGuard;
import newel.client.ReadinessAnswers;
import newel.client.RedFlag;
import newel.client.Symptom;
import newel.client.Vitals;

/** What a case file says was asked and measured. What is left out or null was not answered, which is never read as no. */
final class CaseAnswers {
    static ReadinessAnswers readiness(JsonNode node, List<String> faults) {
        Signs signs = new Signs(node, "$.readiness", faults);
        signs.checkUnknown(Disease.values(), Symptom.values(), RedFlag.values(), PulseGuard.values());
        return new ReadinessAnswers(
                answer(node.path("regularExercise")),
                signs.answers("knownDisease", Disease.class),
                signs.answers("symptoms", Symptom.class),
                signs.answers("redFlags", RedFlag.class),
                answer(node.path("wantsVigorous")),
                answer(node.path("clearedWithinYear")),
                answer(node.path("symptomsCleared")),
                answer(node.path("pulseLoweringMedicine")),
                signs.answers("pulseGuards", PulseGuard.class),
                answer(node.path("lowSugarMedicine")),
                day(node, "clearedOn", faults));
    }

    private static LocalDate day(JsonNode node, String name, List<String> faults) {
        return node.hasNonNull(name) ? CaseReader.date(node, name, "$.readiness", faults) : null;
    }

    static FallsAnswers falls(JsonNode node, List<String> faults) {
        Signs items = new Signs(node, "$.falls", faults);
        items.checkUnknown(FallsItem.values());
        return new FallsAnswers(
                whole(node, "fallsPastYear"),
                answer(node.path("injured")),
                answer(node.path("unableToRise")),
                answer(node.path("lostConsciousness")),
                answer(node.path("frail")),
                answer(node.path("unsteady")),
                answer(node.path("worried")),
                items.answers("items", FallsItem.class));
    }

    static Vitals vitals(JsonNode node) {
        return new Vitals(
                whole(node, "systolic"),
                whole(node, "diastolic"),
                whole(node, "restingPulse"),
                whole(node, "oxygen"),
                number(node, "temperatureC"),
                whole(node, "posturalDrop"),
                number(node, "weightGainKg"),
                answer(node.path("symptoms")),
                whole(node, "posturalDropLower"));
    }

    static Answer answer(JsonNode node) {
        return node.isBoolean() ? (node.asBoolean() ? Answer.YES : Answer.NO) : Answer.UNKNOWN;
    }

    private static Integer whole(JsonNode node, String name) {
        return node.hasNonNull(name) ? node.get(name).asInt() : null;
    }

    private static Double number(JsonNode node, String name) {
        return node.hasNonNull(name) ? node.get(name).asDouble() : null;
    }

    private CaseAnswers() {}
}
