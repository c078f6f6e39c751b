package newel.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Where each variant stands when a movement is drawn as a stair: flights side by side, easiest bottom left.
 *
 * <p>The longest way up is the first flight and runs along the diagonal: its step on level n stands in column n. What is
 * left is taken apart in the same way, and each further flight stands as few columns to the right as leave every place to
 * one step, and never left of the flight that it springs from. So a step has its equals in difficulty at its side, and a
 * link leads up.
 */
public record FlightPlan(int levels, int columns, List<Place> places, List<Edge> edges) {
    /** Level 0 is the lowest, column 0 the leftmost. */
    public record Place(Variant variant, int level, int column) {}

    /** A link, drawn from the harder step down to the easier one. */
    public record Edge(Place harder, Place easier, Link link) {}

    public static FlightPlan of(Movement movement) {
        List<List<Variant>> levels = Flight.of(movement).levels();
        Map<String, Integer> level = new HashMap<>();
        for (int at = 0; at < levels.size(); at++) {
            for (Variant variant : levels.get(at)) {
                level.put(variant.id(), at);
            }
        }
        Map<String, Place> placed = new LinkedHashMap<>();
        for (List<Variant> way : ways(movement, level)) {
            int shift = shift(way, level, placed);
            way.forEach(variant -> {
                int at = level.get(variant.id());
                placed.put(variant.id(), new Place(variant, at, at + shift));
            });
        }
        return new FlightPlan(levels.size(), columns(placed), inOrder(placed), edges(placed));
    }

    /** The steps of one level from left to right, the lowest level first. */
    private static List<Place> inOrder(Map<String, Place> placed) {
        return placed.values().stream()
                .sorted(Comparator.comparingInt(Place::level).thenComparingInt(Place::column))
                .toList();
    }

    private static int columns(Map<String, Place> placed) {
        return placed.values().stream().mapToInt(Place::column).max().orElse(-1) + 1;
    }

    private static List<Edge> edges(Map<String, Place> placed) {
        List<Edge> edges = new ArrayList<>();
        for (Place harder : inOrder(placed)) {
            for (Link link : harder.variant().easier()) {
                edges.add(new Edge(harder, placed.get(link.easier()), link));
            }
        }
        return List.copyOf(edges);
    }

    /** Ways up that share no variant, the longest first, each from its easiest step. */
    private static List<List<Variant>> ways(Movement movement, Map<String, Integer> level) {
        Set<String> left = new HashSet<>(level.keySet());
        List<Variant> rising = movement.variants().stream()
                .sorted(Comparator.comparingInt(variant -> level.get(variant.id())))
                .toList();
        List<List<Variant>> ways = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Variant> way = longest(rising, left);
            way.forEach(variant -> left.remove(variant.id()));
            ways.add(way);
        }
        return ways;
    }

    /** @param rising every variant after all that it links down to */
    private static List<Variant> longest(List<Variant> rising, Set<String> among) {
        Map<String, List<Variant>> upTo = new HashMap<>();
        List<Variant> longest = List.of();
        for (Variant variant : rising) {
            if (among.contains(variant.id())) {
                List<Variant> way = new ArrayList<>(below(variant, upTo));
                way.add(variant);
                upTo.put(variant.id(), way);
                longest = way.size() > longest.size() ? way : longest;
            }
        }
        return longest;
    }

    private static List<Variant> below(Variant variant, Map<String, List<Variant>> upTo) {
        return variant.easier().stream()
                .map(link -> upTo.getOrDefault(link.easier(), List.of()))
                .max(Comparator.comparingInt(List::size))
                .orElse(List.of());
    }

    private static int shift(List<Variant> way, Map<String, Integer> level, Map<String, Place> placed) {
        int shift = way.getFirst().easier().stream()
                .map(link -> placed.get(link.easier()))
                .filter(place -> place != null)
                .mapToInt(place -> place.column() - place.level())
                .max()
                .orElse(0);
        while (taken(way, shift, level, placed)) {
            shift++;
        }
        return shift;
    }

    private static boolean taken(List<Variant> way, int shift, Map<String, Integer> level, Map<String, Place> placed) {
        return way.stream()
                .map(variant -> level.get(variant.id()))
                .anyMatch(at -> placed.values().stream()
                        .anyMatch(place -> place.level() == at && place.column() == at + shift));
    }
}
