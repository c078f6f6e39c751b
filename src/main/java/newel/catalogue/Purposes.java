package newel.catalogue;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;

/** Weights 0 to 3 on each purpose (what is absent is 0) and the regions kept moving. */
public record Purposes(Map<Purpose, Integer> weights, Set<Region> mobility) {
    /** A region counts as much as a secondary muscle group when purposes are compared (design choice). */
    public static final double REGION_WEIGHT = 1;

    public Purposes {
        EnumMap<Purpose, Integer> sorted = new EnumMap<>(Purpose.class);
        sorted.putAll(weights);
        weights = Collections.unmodifiableMap(sorted);
    }

    public int weight(Purpose purpose) {
        return weights.getOrDefault(purpose, 0);
    }

    /** Cosine of the two purpose vectors: 1 the same purpose, 0 nothing in common. */
    public double nearness(Purposes other) {
        double both = dot(other);
        return both == 0 ? 0 : both / Math.sqrt(dot(this) * other.dot(other));
    }

    private double dot(Purposes other) {
        double sum = 0;
        for (Purpose purpose : Purpose.values()) {
            sum += weight(purpose) * other.weight(purpose);
        }
        for (Region region : mobility) {
            sum += other.mobility.contains(region) ? REGION_WEIGHT * REGION_WEIGHT : 0;
        }
        return sum;
    }
}
