package newel.casefile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import newel.catalogue.Catalogue;
import newel.catalogue.Dose;
import newel.catalogue.Purpose;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.compose.Activity;
import newel.compose.Block;
import newel.compose.Composed;
import newel.compose.Item;
import newel.compose.LeftOut;
import newel.compose.Reached;
import newel.compose.Session;
import newel.compose.Suiting;
import newel.compose.Timing;
import newel.limit.VariantDemands;
import newel.program.Drafted;
import newel.program.Drafting;
import newel.program.Suited;
import newel.screen.Choices;
import newel.screen.Permission;
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
        Screening screening = Screening.of(client, Choices.strict(), today);
        ObjectNode out = CaseScreening.of(client, screening, today);
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
        ArrayNode sessions = out.putArray("sessions");
        switch (new Drafting(catalogue, client, suiting, today).first()) {
            case Drafted.Made made -> {
                week(out, sessions, made);
                leftOut(out, made.version().leftOut());
            }
            case Drafted.Refused refused -> {
                ObjectNode given = out.putArray("givenUp").addObject();
                given.put("wish", "A session").set("conflict", CaseWriter.texts(refused.conflict()));
                leftOut(out, List.of());
            }
        }
    }

    /** A day that could not be composed has no session and is named under what was given up. */
    private void week(ObjectNode out, ArrayNode sessions, Drafted.Made made) {
        ArrayNode givenUp = JSON.arrayNode();
        made.week().days().forEach((day, composed) -> {
            String name = CaseWriter.plain(day).substring(0, 3);
            Told told = Told.of(composed);
            if (composed instanceof Composed.Made one) {
                sessions.add(session(name, one.session(), told));
            }
            told.givenUp(name, givenUp);
        });
        out.set("week", week(made.week().reached()));
        out.set("givenUp", givenUp);
    }

    private static void leftOut(ObjectNode out, List<LeftOut> all) {
        ArrayNode leftOut = out.putArray("leftOut");
        all.forEach(each ->
                leftOut.addObject().put("movement", each.movement()).set("reasons", CaseWriter.texts(each.reasons())));
    }

    private ObjectNode session(String day, Session session, Told told) {
        ObjectNode node = JSON.objectNode();
        node.put("day", day);
        node.put("seconds", timing.session(session));
        node.set("proof", told.proof());
        ArrayNode blocks = node.putArray("blocks");
        session.blocks().forEach(block -> blocks.add(block(block, told)));
        return node;
    }

    private ObjectNode block(Block block, Told told) {
        ObjectNode node = JSON.objectNode();
        node.put("kind", CaseWriter.plain(block.kind()));
        node.put("passes", block.passes());
        node.put("restSeconds", block.restSeconds());
        ArrayNode items = node.putArray("items");
        block.items().forEach(item -> items.add(item(item, told)));
        return node;
    }

    private ObjectNode item(Item item, Told told) {
        Variant variant = catalogue.variant(item.variant()).orElseThrow();
        ObjectNode node = JSON.objectNode();
        node.put("movement", item.movement());
        node.put("variant", item.variant());
        ObjectNode adapted = node.putObject("adapted");
        adapted.put("how", CaseWriter.plain(item.how()));
        adapted.set("path", CaseWriter.texts(item.path()));
        adapted.putObject("trim")
                .put("left", item.share().left())
                .put("right", item.share().right());
        adapted.set("reasons", CaseWriter.texts(item.why()));
        Dose dose = item.dose();
        node.putObject("dose")
                .put("sets", dose.sets())
                .put("repetitions", dose.repetitions())
                .put("seconds", dose.seconds());
        node.put("seconds", timing.work(item));
        told.why(item.movement(), node);
        node.set("demands", DemandTexts.write(demands.at(variant, item.share())));
        return node;
    }

    /** On how many days each group is worked and balance is; what falls short of the guideline; minutes beside it. */
    private static ObjectNode week(Reached reached) {
        ObjectNode node = JSON.objectNode();
        for (Purpose purpose : Purpose.values()) {
            if (purpose != Purpose.PULSE) {
                node.put(CaseWriter.plain(purpose), reached.days(purpose));
            }
        }
        node.set("shortOf", CaseWriter.texts(reached.shortOf()));
        node.putObject("activity")
                .put("moderateMinutes", reached.activity().moderateMinutes())
                .put("allMinutes", reached.activity().allMinutes())
                .put("guidelineMinutes", reached.activity().guidelineMinutes())
                .put("estimate", Activity.ESTIMATE);
        return node;
    }
}
