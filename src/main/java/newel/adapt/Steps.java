package newel.adapt;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import newel.catalogue.Link;
import newel.catalogue.Movement;
import newel.catalogue.Variant;

/** Shortest ways between a movement's variants along its links, in either direction. */
final class Steps {
    private final Map<String, List<String>> neighbours = new LinkedHashMap<>();
    private final Map<String, Map<String, List<String>>> ways = new ConcurrentHashMap<>();

    Steps(Movement movement) {
        movement.variants().forEach(variant -> neighbours.put(variant.id(), new ArrayList<>()));
        for (Variant variant : movement.variants()) {
            for (Link link : variant.easier()) {
                neighbours.get(variant.id()).add(link.easier());
                neighbours.get(link.easier()).add(variant.id());
            }
        }
    }

    /** Ids from one variant to each other, both ends included, in breadth-first order; worked out once. */
    Map<String, List<String>> from(String start) {
        return ways.computeIfAbsent(start, this::search);
    }

    private Map<String, List<String>> search(String start) {
        Map<String, List<String>> ways = new HashMap<>();
        ways.put(start, List.of(start));
        Deque<String> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            String at = open.poll();
            for (String next : neighbours.get(at)) {
                if (!ways.containsKey(next)) {
                    List<String> way = new ArrayList<>(ways.get(at));
                    way.add(next);
                    ways.put(next, List.copyOf(way));
                    open.add(next);
                }
            }
        }
        return ways;
    }
}
