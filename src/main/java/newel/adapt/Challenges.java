package newel.adapt;

import java.util.HashMap;
import java.util.Map;
import newel.catalogue.Catalogue;
import newel.catalogue.Flight;
import newel.catalogue.Link;
import newel.catalogue.Movement;
import newel.catalogue.Variant;

/**
 * How much each variant challenges, 0 to about 1: effort, position, support and coordination together (weights are a design
 * choice). A step down a link never challenges more, whatever the sum says.
 */
final class Challenges {
    private static final double EFFORT = 0.4 / 10;
    private static final double POSITION = 0.2 / 5;
    private static final double SUPPORT = 0.2 / 4;
    private static final double COORDINATION = 0.2 / 2;

    private final Map<String, Double> challenge = new HashMap<>();

    Challenges(Catalogue catalogue) {
        catalogue.movements().forEach(this::measure);
    }

    double of(Variant variant) {
        return challenge.get(variant.id());
    }

    /** From the hardest down, each link caps the easier end. */
    private void measure(Movement movement) {
        for (Variant variant : Flight.of(movement).steps().reversed()) {
            double own = challenge.merge(variant.id(), sum(variant), Math::min);
            for (Link link : variant.easier()) {
                challenge.merge(link.easier(), own, Math::min);
            }
        }
    }

    private static double sum(Variant v) {
        return EFFORT * v.effort()
                + POSITION * v.position().ordinal()
                + SUPPORT * v.support().ordinal()
                + COORDINATION * (v.coordination() - 1);
    }
}
