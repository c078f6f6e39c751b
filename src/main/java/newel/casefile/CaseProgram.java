package newel.casefile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import newel.body.Demands;
import newel.body.Joint;
import newel.body.Motion;
import newel.body.Peak;
import newel.catalogue.Catalogue;
import newel.catalogue.Dose;
import newel.catalogue.Purpose;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.compose.Block;
import newel.compose.Item;
import newel.compose.Suiting;
import newel.compose.Timing;
import newel.limit.VariantDemands;
import newel.program.Drafting;
import newel.program.Suited;
import newel.program.Version;
import newel.referral.Note;
import newel.referral.Referral;
import newel.screen.AtRest;
import newel.screen.Finding;
import newel.screen.Permission;
import newel.screen.Readiness;
import newel.screen.Screening;

/** The program that Newel would build for a case, as JSON: what screening says, the sessions, and what was left out. */
public final class CaseProgram {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final Catalogue catalogue;
    private final VariantDemands demands;
    private final Suited suited;
    private final Timing timing;

    public CaseProgram(Catalogue catalogue, VariantDemands demands) {
        this.catalogue = catalogue;
        this.demands = demands;
        this.suited = new Suited(catalogue, demands);
        this.timing = new Timing(catalogue);
    }

    public ObjectNode of(Client client, LocalDate today) {
        Screening screening = Screening.of(client);
        ObjectNode out = JSON.objectNode();
        out.set("readiness", readiness(screening.readiness()));
        out.set(
                "falls",
                outcome("level", screening.falls().level(), screening.falls().reasons()));
        out.set("vitals", vitals(screening.atRest()));
        ArrayNode measures = out.putArray("measures");
        client.measures().forEach(each -> measures.add(CaseWriter.measure(each)));
        out.set("referral", referral(Referral.of(client, screening, today)));
        out.set("face", texts(screening.face()));
        if (screening.permission() == Permission.NOTHING) {
            out.putArray("sessions");
            out.putArray("leftOut");
        } else {
            program(out, client, screening, today);
        }
        return out;
    }

    private void program(ObjectNode out, Client client, Screening screening, LocalDate today) {
        Suiting suiting = suited.to(client, screening.limits(), screening.withheld());
        Version version = Drafting.first(catalogue, client, suiting, today);
        ArrayNode sessions = out.putArray("sessions");
        version.days().stream()
                .sorted()
                .forEach(day -> sessions.add(session(CaseWriter.plain(day).substring(0, 3), version)));
        out.set("week", week(version));
        ArrayNode leftOut = out.putArray("leftOut");
        version.leftOut()
                .forEach(each ->
                        leftOut.addObject().put("movement", each.movement()).set("reasons", texts(each.reasons())));
    }

    private static ObjectNode readiness(Readiness readiness) {
        String outcome = switch (readiness) {
            case Readiness.Clear clear -> "clear";
            case Readiness.ClearWithLimits clear -> "clear-with-limits";
            case Readiness.Wait wait -> "wait";
            case Readiness.Stop stop -> "stop";
        };
        ObjectNode node = JSON.objectNode();
        node.put("outcome", outcome);
        node.put("row", readiness.row().name());
        node.set("reasons", findings(readiness.reasons()));
        return node;
    }

    private static ObjectNode vitals(AtRest atRest) {
        String outcome = switch (atRest) {
            case AtRest.Go go -> "go";
            case AtRest.NotMeasured missing -> "not-measured";
            case AtRest.LightOnly light -> "light-only";
            case AtRest.Hold hold -> "hold";
        };
        ObjectNode node = JSON.objectNode();
        node.put("outcome", outcome);
        node.set("reasons", findings(atRest.reasons()));
        return node;
    }

    private static ObjectNode outcome(String name, Enum<?> outcome, List<Finding> reasons) {
        ObjectNode node = JSON.objectNode();
        node.put(name, CaseWriter.plain(outcome));
        node.set("reasons", findings(reasons));
        return node;
    }

    private static ArrayNode referral(Optional<Note> note) {
        ArrayNode list = JSON.arrayNode();
        note.ifPresent(each -> each.findings()
                .forEach(finding -> list.addObject()
                        .put("urgency", CaseWriter.plain(each.urgency()))
                        .put("reason", finding)
                        .put("to", each.to())));
        return list;
    }

    private ObjectNode session(String day, Version version) {
        ObjectNode node = JSON.objectNode();
        node.put("day", day);
        node.put("seconds", timing.session(version.session()));
        ArrayNode blocks = node.putArray("blocks");
        version.session().blocks().forEach(block -> blocks.add(block(block)));
        return node;
    }

    private ObjectNode block(Block block) {
        ObjectNode node = JSON.objectNode();
        node.put("kind", CaseWriter.plain(block.kind()));
        node.put("passes", block.passes());
        node.put("restSeconds", block.restSeconds());
        ArrayNode items = node.putArray("items");
        block.items().forEach(item -> items.add(item(item)));
        return node;
    }

    private ObjectNode item(Item item) {
        Variant variant = catalogue.variant(item.variant()).orElseThrow();
        ObjectNode node = JSON.objectNode();
        node.put("movement", item.movement());
        node.put("variant", item.variant());
        ObjectNode adapted = node.putObject("adapted");
        adapted.put("how", CaseWriter.plain(item.how()));
        adapted.set("path", texts(item.path()));
        adapted.putObject("trim")
                .put("left", item.share().left())
                .put("right", item.share().right());
        adapted.set("reasons", texts(item.why()));
        Dose dose = item.dose();
        node.putObject("dose")
                .put("sets", dose.sets())
                .put("repetitions", dose.repetitions())
                .put("seconds", dose.seconds());
        node.put("seconds", timing.work(item));
        node.set("demands", demands(demands.at(variant, item.share())));
        return node;
    }

    /** Angles in whole degrees, loads in body weight times stature, lengths in statures. */
    private static ObjectNode demands(Demands asked) {
        ObjectNode node = JSON.objectNode();
        ObjectNode angles = node.putObject("angles");
        for (Motion motion : Motion.values()) {
            sides(angles, motion, asked.angles(), 1);
        }
        ObjectNode loads = node.putObject("loads");
        for (Joint joint : Joint.values()) {
            sides(loads, joint, asked.loads(), 10_000);
        }
        node.put("balanceMargin", rounded(asked.margin(), 1000));
        node.put("fingertips", rounded(asked.fingertips(), 1000));
        node.put("headBelowHeart", asked.headBelowHeart());
        return node;
    }

    private static <E extends Enum<E>> void sides(ObjectNode node, E key, Map<E, Peak> peaks, int grain) {
        Peak peak = peaks.getOrDefault(key, Peak.ZERO);
        if (peak.most() * grain >= 0.5) {
            node.putObject(CaseWriter.plain(key))
                    .put("left", rounded(peak.left(), grain))
                    .put("right", rounded(peak.right(), grain));
        }
    }

    private static double rounded(double value, int grain) {
        return Double.isFinite(value) ? Math.rint(value * grain) / grain : 0;
    }

    /** On how many days each group is worked as a main group of an item. */
    private ObjectNode week(Version version) {
        ObjectNode node = JSON.objectNode();
        for (Purpose purpose : Purpose.values()) {
            boolean worked = version.session()
                    .items()
                    .map(item -> catalogue.variant(item.variant()).orElseThrow())
                    .anyMatch(variant -> variant.purposes().weight(purpose) >= 2);
            node.put(CaseWriter.plain(purpose), worked ? version.days().size() : 0);
        }
        return node;
    }

    private static ArrayNode findings(List<Finding> findings) {
        return texts(findings.stream().map(Finding::text).toList());
    }

    private static ArrayNode texts(List<String> lines) {
        ArrayNode list = JSON.arrayNode();
        lines.forEach(list::add);
        return list;
    }
}
