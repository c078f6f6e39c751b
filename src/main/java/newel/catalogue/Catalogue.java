package newel.catalogue;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All movements, in a fixed order, with their variants by id. */
public final class Catalogue {
    private final List<Movement> movements;
    private final Map<String, Movement> byId = new HashMap<>();
    private final Map<String, Variant> variants = new LinkedHashMap<>();

    public Catalogue(List<Movement> movements) {
        this.movements = List.copyOf(movements);
        for (Movement movement : movements) {
            byId.put(movement.id(), movement);
            movement.variants().forEach(variant -> variants.put(variant.id(), variant));
        }
    }

    public List<Movement> movements() {
        return movements;
    }

    public List<Variant> variants() {
        return List.copyOf(variants.values());
    }

    public Optional<Movement> movement(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    public Optional<Variant> variant(String id) {
        return Optional.ofNullable(variants.get(id));
    }

    public Movement movementOf(Variant variant) {
        return byId.get(variant.movement());
    }

    /** The variants one step harder: those that link down to this one. */
    public List<Variant> harder(Variant variant) {
        return movementOf(variant).variants().stream()
                .filter(other ->
                        other.easier().stream().anyMatch(link -> link.easier().equals(variant.id())))
                .toList();
    }

    /** The variants one step easier. */
    public List<Variant> easier(Variant variant) {
        return variant.easier().stream()
                .map(link -> variants.get(link.easier()))
                .toList();
    }
}
