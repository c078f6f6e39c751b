package newel.casefile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import newel.compose.Composed;
import newel.compose.GivenUp;
import newel.compose.Proof;
import newel.compose.Why;

/** What composing said about a session, as JSON. */
final class Told {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final Proof proof;
    private final Map<String, Why> whys = new HashMap<>();
    private final List<GivenUp> givenUp;

    private Told(Proof proof, List<Why> whys, List<GivenUp> givenUp) {
        this.proof = proof;
        this.givenUp = givenUp;
        whys.forEach(why -> this.whys.put(why.movement(), why));
    }

    /** Where nothing could be made, the proof is that nothing can, and the conflict stands under what was given up. */
    static Told of(Composed composed) {
        return switch (composed) {
            case Composed.Made made -> new Told(made.proof(), made.why(), made.givenUp());
            case Composed.Refused refused ->
                new Told(new Proof(true, 0, 0), List.of(), List.of(new GivenUp("A session", refused.conflict())));
        };
    }

    ObjectNode proof() {
        return JSON.objectNode()
                .put("optimal", proof.optimal())
                .put("score", proof.score())
                .put("bound", proof.bound());
    }

    void givenUp(String day, ArrayNode into) {
        givenUp.forEach(each -> into.addObject()
                .put("day", day)
                .put("wish", each.wish())
                .set("conflict", CaseWriter.texts(each.conflict())));
    }

    /** What counted for an item, and the runner-up for its place where there is one. */
    void why(String movement, ObjectNode item) {
        Why why = whys.get(movement);
        ArrayNode counted = item.putArray("why");
        why.lines().forEach(line -> counted.addObject().put("for", line.title()).put("points", line.points()));
        if (why.runnerUp().isEmpty()) {
            item.putNull("runnerUp");
        } else {
            item.putObject("runnerUp").put("variant", why.runnerUp()).put("behind", why.behind());
        }
    }
}
