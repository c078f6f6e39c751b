package newel.compose;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import newel.catalogue.Kind;
import newel.catalogue.Purpose;
import newel.catalogue.Region;

/**
 * What rules and terms look at beside the place and the option.
 *
 * @param mostWorked muscle groups that balance and rounds work, most worked first; empty while those are being chosen
 */
record Context(Wish wish, List<Purpose> mostWorked) {
    /** The places that move when a group works (anatomy, from memory). */
    private static final Map<Purpose, Set<Region>> MOVES = Map.of(
            Purpose.LEGS, EnumSet.of(Region.KNEE, Region.ANKLE),
            Purpose.HIPS, EnumSet.of(Region.HIP),
            Purpose.BACK, EnumSet.of(Region.UPPER_BACK, Region.SHOULDER_BLADE),
            Purpose.ABDOMEN, EnumSet.of(Region.LOW_BACK, Region.UPPER_BACK),
            Purpose.CHEST, EnumSet.of(Region.SHOULDER),
            Purpose.SHOULDERS, EnumSet.of(Region.SHOULDER, Region.SHOULDER_BLADE),
            Purpose.ARMS, EnumSet.of(Region.ELBOW, Region.WRIST));

    static Context before(Wish wish) {
        return new Context(wish, List.of());
    }

    static Context after(Wish wish, List<Option> chosen) {
        Map<Purpose, Integer> worked = new EnumMap<>(Purpose.class);
        for (Purpose purpose : MOVES.keySet()) {
            for (Option option : chosen) {
                int weight = option.purposes().weight(purpose);
                if (weight >= Option.WORKED) {
                    worked.merge(purpose, weight, Integer::sum);
                }
            }
        }
        return new Context(
                wish,
                worked.keySet().stream()
                        .sorted(Comparator.comparing((Purpose purpose) -> -worked.get(purpose))
                                .thenComparing(Comparator.naturalOrder()))
                        .toList());
    }

    Set<Purpose> worked() {
        return Set.copyOf(mostWorked);
    }

    Set<Region> loaded() {
        Set<Region> loaded = EnumSet.noneOf(Region.class);
        mostWorked.forEach(purpose -> loaded.addAll(MOVES.get(purpose)));
        return loaded;
    }

    /** Whether an option makes ready what this group moves. */
    static boolean loosens(Option option, Purpose group) {
        return option.mobility().stream().anyMatch(MOVES.get(group)::contains)
                || option.purposes().weight(group) >= Option.WORKED;
    }

    /** Whether an option lengthens this group. There are no stretches for the arms by themselves. */
    static boolean stretches(Option option, Purpose group) {
        return option.kind() == Kind.STRETCH && option.purposes().weight(group) >= 1;
    }
}
