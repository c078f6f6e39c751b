package newel.casefile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import newel.assess.Asked;
import newel.assess.Guides;
import newel.body.Side;
import newel.client.Aid;
import newel.client.Done;
import newel.client.Measure;
import newel.client.Measured;
import newel.client.Part;
import newel.client.Quantity;
import newel.client.Unit;

/** One result of a test in a case file. */
final class CaseMeasure {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    /** Empty, and a fault, for what cannot be: a unit of another kind, or parts of a test that has none. */
    static Optional<Measured> read(JsonNode node, LocalDate on, String path, List<String> faults) {
        Measure measure = CaseReader.constant(Measure.class, node.get("test").asText());
        Unit unit = unit(node).orElse(measure.unit());
        boolean inParts = Guides.shipped().of(measure).asks(Asked.PARTS);
        if (!unit.comparesWith(measure.unit())) {
            faults.add("%s.unit: this test is not measured in %s".formatted(path, unit.words()));
            return Optional.empty();
        }
        if (node.has("parts") && !inParts) {
            faults.add(path + ".parts: this test has one value and no parts");
            return Optional.empty();
        }
        if (node.has("parts")) {
            return inParts(measure, node, on, path, faults);
        }
        BigDecimal value = node.has("value") ? node.get("value").decimalValue() : BigDecimal.ZERO;
        return Optional.of(new Measured(measure, new Quantity(value, unit), on, done(node)));
    }

    private static Optional<Measured> inParts(
            Measure measure, JsonNode node, LocalDate on, String path, List<String> faults) {
        Measured summed = Guides.shipped().inParts(measure, parts(node.get("parts")), on, done(node));
        boolean agrees = !node.has("value")
                || node.get("value").decimalValue().compareTo(summed.result().amount()) == 0;
        if (!agrees) {
            faults.add("%s.value: the parts come to %s; leave value out or mend them"
                    .formatted(path, summed.result().number()));
        }
        return agrees ? Optional.of(summed) : Optional.empty();
    }

    private static Optional<Unit> unit(JsonNode node) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.words().equals(node.path("unit").asText()))
                .findFirst();
    }

    private static Done done(JsonNode node) {
        return new Done(
                node.path("unable").asBoolean(),
                node.path("armsUsed").asBoolean(),
                node.has("side")
                        ? CaseReader.constant(Side.class, node.get("side").asText())
                        : null,
                CaseReader.constant(Aid.class, node.path("aid").asText("none")));
    }

    private static Map<Part, BigDecimal> parts(JsonNode node) {
        Map<Part, BigDecimal> parts = new EnumMap<>(Part.class);
        node.fields()
                .forEachRemaining(each -> parts.put(
                        CaseReader.constant(Part.class, each.getKey()),
                        each.getValue().decimalValue()));
        return parts;
    }

    static ObjectNode write(Measured each) {
        ObjectNode node = JSON.objectNode();
        node.put("test", CaseWriter.plain(each.measure()));
        node.set("value", number(each.result().amount()));
        if (each.result().unit() != each.measure().unit()) {
            node.put("unit", each.result().unit().words());
        }
        node.put("on", each.on().toString());
        flag(node, "armsUsed", each.armsUsed());
        flag(node, "unable", each.unable());
        if (each.done().side() != null) {
            node.put("side", CaseWriter.plain(each.done().side()));
        }
        if (each.done().aid() != Aid.NONE) {
            node.put("aid", CaseWriter.plain(each.done().aid()));
        }
        if (!each.parts().isEmpty()) {
            ObjectNode parts = node.putObject("parts");
            each.parts().entrySet().stream()
                    .sorted(Map.Entry.comparingByKey())
                    .forEach(part -> parts.set(CaseWriter.plain(part.getKey()), number(part.getValue())));
        }
        return node;
    }

    private static void flag(ObjectNode node, String name, boolean set) {
        if (set) {
            node.put(name, true);
        }
    }

    /** A whole number is written without a point. */
    static JsonNode number(BigDecimal amount) {
        return amount.scale() <= 0 ? JSON.numberNode(amount.intValueExact()) : JSON.numberNode(amount);
    }

    private CaseMeasure() {}
}
