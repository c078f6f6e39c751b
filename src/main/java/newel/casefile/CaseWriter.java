package newel.casefile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Client;
import newel.client.Disease;
import newel.client.FallsAnswers;
import newel.client.FallsItem;
import newel.client.PulseGuard;
import newel.client.ReadinessAnswers;
import newel.client.RedFlag;
import newel.client.Sign;
import newel.client.Symptom;
import newel.client.Vitals;

/** Writes a client as a case file: no name, no date of birth, nobody to call, no words that were said. */
public final class CaseWriter {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    public static ObjectNode write(Client client, LocalDate today) {
        ObjectNode node = JSON.objectNode();
        node.put("case", 1);
        node.put("age", client.profile().age(today));
        node.put("sex", plain(client.profile().sex()));
        node.put("statureCm", client.profile().statureCm());
        if (client.profile().massKg() != null) {
            node.put("massKg", client.profile().massKg());
        }
        ObjectNode home = node.putObject("home");
        home.set("kit", names(client.home().kit()));
        home.put("ceilingCm", client.home().ceilingCm());
        put(home, "floor", client.home().floor());
        home.put("clearMetres", client.home().clearMetres());
        node.put("minutes", client.wishes().minutes());
        ArrayNode days = node.putArray("days");
        client.wishes().days().stream()
                .sorted()
                .forEach(day -> days.add(plain(day).substring(0, 3)));
        ArrayNode goals = node.putArray("goals");
        client.wishes().goals().forEach(goal -> goals.add(plain(goal)));
        node.put("experience", plain(client.wishes().experience()));
        node.set("readiness", readiness(client.readiness()));
        node.set("falls", falls(client.falls()));
        node.set("vitals", vitals(client.vitals()));
        ArrayNode measures = node.putArray("measures");
        client.measures().forEach(each -> measures.add(CaseMeasure.write(each)));
        ArrayNode limitations = node.putArray("limitations");
        client.limitations().forEach(each -> LimitationTexts.write(each, limitations));
        return node;
    }

    private static ObjectNode readiness(ReadinessAnswers r) {
        ObjectNode node = JSON.objectNode();
        ArrayNode unknown = JSON.arrayNode();
        put(node, "regularExercise", r.regularExercise());
        signs(node, "knownDisease", r.knownDisease(), Disease.class, unknown);
        signs(node, "symptoms", r.symptoms(), Symptom.class, unknown);
        signs(node, "redFlags", r.redFlags(), RedFlag.class, unknown);
        signs(node, "pulseGuards", r.pulseGuards(), PulseGuard.class, unknown);
        if (!unknown.isEmpty()) {
            node.set("unknown", unknown);
        }
        put(node, "wantsVigorous", r.wantsVigorous());
        put(node, "clearedWithinYear", r.clearedWithinYear());
        put(node, "symptomsCleared", r.symptomsCleared());
        put(node, "pulseLoweringMedicine", r.pulseLoweringMedicine());
        put(node, "lowSugarMedicine", r.lowSugarMedicine());
        if (r.clearedOn() != null) {
            node.put("clearedOn", r.clearedOn().toString());
        }
        return node;
    }

    private static <E extends Enum<E> & Sign> void signs(
            ObjectNode node, String name, Answers<E> answers, Class<E> type, ArrayNode unknown) {
        if (answers.all(type, Answer.UNKNOWN).size() == type.getEnumConstants().length) {
            return;
        }
        ArrayNode yes = node.putArray(name);
        answers.all(type, Answer.YES).forEach(each -> yes.add(each.code()));
        answers.all(type, Answer.UNKNOWN).forEach(each -> unknown.add(each.code()));
    }

    private static ObjectNode falls(FallsAnswers f) {
        ObjectNode node = JSON.objectNode();
        if (f.fallsPastYear() != null) {
            node.put("fallsPastYear", f.fallsPastYear());
        }
        put(node, "injured", f.injured());
        put(node, "unableToRise", f.unableToRise());
        put(node, "lostConsciousness", f.lostConsciousness());
        put(node, "frail", f.frail());
        put(node, "unsteady", f.unsteady());
        put(node, "worried", f.worried());
        ArrayNode unknown = JSON.arrayNode();
        signs(node, "items", f.items(), FallsItem.class, unknown);
        if (!unknown.isEmpty()) {
            node.set("unknown", unknown);
        }
        return node;
    }

    private static ObjectNode vitals(Vitals v) {
        ObjectNode node = JSON.objectNode();
        put(node, "systolic", v.systolic());
        put(node, "diastolic", v.diastolic());
        put(node, "restingPulse", v.restingPulse());
        put(node, "oxygen", v.oxygen());
        put(node, "temperatureC", v.temperatureC());
        put(node, "posturalDrop", v.posturalDrop());
        put(node, "weightGainKg", v.weightGainKg());
        put(node, "symptoms", v.symptoms());
        put(node, "posturalDropLower", v.posturalDropLower());
        return node;
    }

    private static void put(ObjectNode node, String name, Answer answer) {
        if (answer != Answer.UNKNOWN) {
            node.put(name, answer == Answer.YES);
        }
    }

    private static void put(ObjectNode node, String name, Integer value) {
        if (value != null) {
            node.put(name, value);
        }
    }

    private static void put(ObjectNode node, String name, Double value) {
        if (value != null) {
            node.put(name, value);
        }
    }

    private static ArrayNode names(Collection<? extends Enum<?>> constants) {
        ArrayNode names = JSON.arrayNode();
        constants.stream().sorted().forEach(each -> names.add(plain(each)));
        return names;
    }

    static ArrayNode texts(List<String> lines) {
        ArrayNode list = JSON.arrayNode();
        lines.forEach(list::add);
        return list;
    }

    static String plain(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private CaseWriter() {}
}
