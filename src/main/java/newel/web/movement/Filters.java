package newel.web.movement;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import newel.catalogue.Movement;
import newel.catalogue.Variant;

/** What the instructor asks of a movement's forms, all of it at once. */
record Filters(List<Filter> all) {
    static final String TEXT = "q";
    static final String KIT = "kit";
    static final String HOME = "home";
    static final String FITS = "fits";
    static final String YES = "yes";

    /**
     * @param name as in the address
     * @param label as said to the instructor
     */
    record Filter(String name, List<String> values, String label, BiPredicate<Movement, Variant> passes) {}

    Filters {
        all = List.copyOf(all);
    }

    boolean pass(Movement movement, Variant variant) {
        return all.stream().allMatch(filter -> filter.passes().test(movement, variant));
    }

    Filters without(String name) {
        return new Filters(
                all.stream().filter(filter -> !filter.name().equals(name)).toList());
    }

    boolean has(String name) {
        return !values(name).isEmpty();
    }

    List<String> values(String name) {
        return all.stream()
                .filter(filter -> filter.name().equals(name))
                .flatMap(filter -> filter.values().stream())
                .toList();
    }

    /** The find page with these. */
    String path(String client) {
        String pairs = Stream.concat(
                        client.isEmpty() ? Stream.empty() : Stream.of(pair("client", client)),
                        all.stream()
                                .flatMap(filter -> filter.values().stream().map(value -> pair(filter.name(), value))))
                .collect(Collectors.joining("&"));
        return pairs.isEmpty() ? MovementRoutes.AT : MovementRoutes.AT + "?" + pairs;
    }

    private static String pair(String name, String value) {
        return name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8);
    }
}
