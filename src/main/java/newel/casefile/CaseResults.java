package newel.casefile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import newel.assess.Assessing;
import newel.assess.Guides;
import newel.assess.Result;
import newel.assess.Row;
import newel.assess.Scored;
import newel.assess.Verdict;
import newel.client.Client;
import newel.client.Measured;

/**
 * What the tests of a case come to. The age is the one that the case states: a case has no birthday, so an age on the day of
 * a test would be a guess.
 */
final class CaseResults {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    static ArrayNode of(Client client, LocalDate today) {
        Assessing assessing = new Assessing(Guides.shipped());
        int age = client.profile().age(today);
        ArrayNode list = JSON.arrayNode();
        for (Measured each : client.measures()) {
            list.add(result(assessing.of(each, age, client.profile().sex())));
        }
        return list;
    }

    /** What was measured, its score, and the headline; then what every table says. */
    private static ObjectNode result(Result result) {
        ObjectNode node = CaseMeasure.write(result.measured());
        node.set("score", CaseMeasure.number(Scored.rounded(result.score()).amount()));
        result.headline().ifPresent(verdict -> {
            node.put("band", code(verdict));
            norm(node, verdict, result);
            node.put("source", verdict.rule().citation());
        });
        ArrayNode verdicts = node.putArray("verdicts");
        result.verdicts().forEach(each -> verdicts.add(verdict(each, result)));
        return node;
    }

    private static ObjectNode verdict(Verdict verdict, Result result) {
        ObjectNode node = JSON.objectNode();
        node.put("rule", verdict.rule().id());
        node.put("band", code(verdict));
        norm(node, verdict, result);
        node.put("source", verdict.rule().citation());
        node.put("known", verdict.rule().known().words());
        return node;
    }

    /**
     * Low is the worse end: of a time, where less is better, it is the slower one. A cut-off is one figure. Figures are in
     * the unit they were published in, which is named where the result was typed in another.
     */
    private static void norm(ObjectNode node, Verdict verdict, Result result) {
        Measured measured = result.measured();
        if (measured.result().unit() != measured.measure().unit()) {
            node.put("publishedIn", measured.measure().unit().words());
        }
        switch (verdict) {
            case Verdict.Placed placed -> {
                Row row = placed.row();
                ObjectNode norm = node.putObject("norm");
                norm.set("low", CaseMeasure.number(figure(row.worse())));
                norm.set("high", CaseMeasure.number(figure(row.better())));
            }
            case Verdict.Judged judged ->
                node.set("cut", CaseMeasure.number(figure(judged.row().worse())));
            case Verdict.Graded graded -> {}
            case Verdict.NoNorm none -> {}
        }
    }

    private static BigDecimal figure(BigDecimal figure) {
        BigDecimal plain = figure.stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0) : plain;
    }

    private static String code(Verdict verdict) {
        return verdict.says().code().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private CaseResults() {}
}
