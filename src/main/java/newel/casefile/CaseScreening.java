package newel.casefile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import newel.client.Client;
import newel.referral.Proposal;
import newel.referral.Referral;
import newel.screen.AtRest;
import newel.screen.Readiness;
import newel.screen.Screening;
import newel.source.Finding;

/** What screening says about a case, as JSON. */
final class CaseScreening {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    static ObjectNode of(Client client, Screening screening, LocalDate today) {
        ObjectNode out = JSON.objectNode();
        out.set("readiness", readiness(screening.readiness()));
        out.set(
                "falls",
                reasoned(
                        "level",
                        CaseWriter.plain(screening.falls().level()),
                        screening.falls().reasons()));
        out.set(
                "vitals",
                reasoned(
                        "outcome",
                        outcome(screening.atRest()),
                        screening.atRest().reasons()));
        out.set("measures", CaseResults.of(client, today));
        out.set("referral", referral(Referral.of(screening)));
        out.set("face", CaseWriter.texts(screening.face()));
        return out;
    }

    private static ObjectNode readiness(Readiness readiness) {
        ObjectNode node = JSON.objectNode();
        node.put("outcome", outcome(readiness)).put("row", readiness.row().name());
        node.set("reasons", findings(readiness.reasons()));
        return node;
    }

    private static String outcome(Readiness readiness) {
        return switch (readiness) {
            case Readiness.Clear clear -> "clear";
            case Readiness.ClearWithLimits clear -> "clear-with-limits";
            case Readiness.Wait wait -> "wait";
            case Readiness.Stop stop -> "stop";
        };
    }

    private static String outcome(AtRest atRest) {
        return switch (atRest) {
            case AtRest.Go go -> "go";
            case AtRest.NotMeasured missing -> "not-measured";
            case AtRest.LightOnly light -> "light-only";
            case AtRest.Hold hold -> "hold";
        };
    }

    private static ObjectNode reasoned(String name, String outcome, List<Finding> reasons) {
        ObjectNode node = JSON.objectNode();
        node.put(name, outcome).set("reasons", findings(reasons));
        return node;
    }

    private static ArrayNode referral(Optional<Proposal> proposal) {
        ArrayNode list = JSON.arrayNode();
        proposal.ifPresent(each -> each.findings()
                .forEach(finding -> list.addObject()
                        .put("urgency", CaseWriter.plain(each.urgency()))
                        .put("reason", finding.text() + " (" + finding.rule().citation() + ")")
                        .put("to", each.to().words())));
        return list;
    }

    private static ArrayNode findings(List<Finding> findings) {
        return CaseWriter.texts(findings.stream().map(Finding::text).toList());
    }

    private CaseScreening() {}
}
