package newel.coverage;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import newel.catalogue.Catalogue;
import newel.catalogue.Movement;
import newel.catalogue.Variant;
import newel.limit.Fit;
import newel.limit.Fitting;
import newel.limit.Limits;
import newel.limit.Presets;
import newel.limit.VariantDemands;

/**
 * The whole table.
 *
 * @param gaps every place with nothing in it, explained or not
 * @param idle explanations of gaps that are none
 */
public record Coverage(List<Row> rows, List<Gap> gaps, List<Gap> idle) {

    public static Coverage of(Catalogue catalogue, Presets presets) {
        return of(catalogue, presets, Strictness.read(), new Fitting(VariantDemands.ofBody()));
    }

    static Coverage of(Catalogue catalogue, Presets presets, Strictness strictness, Fitting fitting) {
        List<Row> rows = new ArrayList<>();
        presets.all()
                .forEach(preset -> rows.add(row(catalogue, preset.id(), fits(fitting, Strictness.limits(preset)))));
        strictness.limits().forEach((name, limits) -> rows.add(row(catalogue, name, fits(fitting, limits))));
        for (Place place : Place.values()) {
            rows.add(row(catalogue, place.toString(), (movement, variant) -> place.of(variant)));
        }
        List<Gap> gaps = gaps(rows, strictness.explained());
        List<Gap> idle = strictness.explained().stream()
                .filter(explained -> !gaps.contains(explained))
                .toList();
        return new Coverage(rows, gaps, idle);
    }

    /** Gaps that nobody has explained, and explanations of gaps that are none. */
    public List<String> faults() {
        List<String> faults = new ArrayList<>();
        gaps.stream().filter(gap -> !gap.explained()).forEach(gap -> faults.add(gap.toString()));
        idle.forEach(gap -> faults.add(gap.row() + ", " + gap.serves() + ": is explained as a gap, but is none"));
        return faults;
    }

    private static BiPredicate<Movement, Variant> fits(Fitting fitting, Limits limits) {
        return (movement, variant) -> !(fitting.fit(variant, limits) instanceof Fit.DoesNotFit);
    }

    private static Row row(Catalogue catalogue, String name, BiPredicate<Movement, Variant> fits) {
        Map<Served, Integer> counts = new EnumMap<>(Served.class);
        for (Served served : Served.values()) {
            counts.put(served, 0);
        }
        catalogue.variants().parallelStream()
                .filter(variant -> fits.test(catalogue.movementOf(variant), variant))
                .flatMap(variant -> served(catalogue.movementOf(variant), variant).stream())
                .toList()
                .forEach(served -> counts.merge(served, 1, Integer::sum));
        return new Row(name, counts);
    }

    private static List<Served> served(Movement movement, Variant variant) {
        return List.of(Served.values()).stream()
                .filter(served -> served.by(movement, variant))
                .toList();
    }

    private static List<Gap> gaps(List<Row> rows, List<Gap> explained) {
        List<Gap> gaps = new ArrayList<>();
        for (Row row : rows) {
            row.fitting().forEach((served, count) -> {
                if (count == 0) {
                    gaps.add(explained.stream()
                            .filter(gap -> gap.row().equals(row.name()) && gap.serves() == served)
                            .findFirst()
                            .orElse(new Gap(row.name(), served, "")));
                }
            });
        }
        return gaps;
    }
}
