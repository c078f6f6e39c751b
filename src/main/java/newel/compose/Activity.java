package newel.compose;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collection;
import newel.catalogue.Catalogue;
import newel.catalogue.Kind;
import newel.catalogue.Variant;

/**
 * Minutes of moderate activity in a week of sessions, by values of younger adults: an estimate, and said to be one. Only
 * the moving itself counts, not what is explained, rested or changed between.
 *
 * @param moderateMinutes at 3 MET or more
 * @param allMinutes of moving
 * @param guidelineMinutes what the guideline asks of a whole week, walking and housework included
 */
public record Activity(int moderateMinutes, int allMinutes, int guidelineMinutes) {
    public static final String ESTIMATE =
            "An estimate: these values are of younger adults, and the guideline counts the whole week, walks and chores too.";

    private static final JsonNode FILE = Costs.read("activity.yaml");
    private static final double MODERATE = FILE.path("moderate").path("met").asDouble();

    public static Activity of(Catalogue catalogue, Collection<Session> sessions) {
        double moderate = 0;
        double all = 0;
        for (Session session : sessions) {
            for (Block block : session.blocks()) {
                for (Item item : block.items()) {
                    Variant variant = catalogue.variant(item.variant()).orElseThrow();
                    double minutes = block.passes() * Timing.work(variant, item.dose()) / 60.0;
                    all += minutes;
                    moderate += met(catalogue, variant) >= MODERATE ? minutes : 0;
                }
            }
        }
        return new Activity(
                (int) moderate, (int) all, FILE.path("guideline").path("least").asInt());
    }

    static double met(Catalogue catalogue, Variant variant) {
        boolean standing = Stance.of(variant).posture() == Stance.Posture.STANDING;
        Kind kind = catalogue.movementOf(variant).kind();
        String key = switch (kind) {
            case STRENGTH -> standing ? "standingStrength" : "seatedStrength";
            case PULSE -> standing ? "standingPulse" : "seatedPulse";
            case MOBILITY -> "mobility";
            case BALANCE -> "balance";
            case STRETCH -> "stretch";
            case BREATH -> "breath";
        };
        return FILE.path(key).path("met").asDouble();
    }
}
