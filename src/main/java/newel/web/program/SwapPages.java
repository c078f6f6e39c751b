package newel.web.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import newel.catalogue.Catalogue;
import newel.catalogue.Flight;
import newel.catalogue.Kind;
import newel.catalogue.Movement;
import newel.catalogue.Variant;
import newel.compose.Suiting;

/** Makes the stairs that an item may be swapped along, or added from. */
final class SwapPages {
    /** Other movements shown, nearest in purpose first. */
    private static final int MOST_OTHERS = 12;

    private final Catalogue catalogue;

    SwapPages(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The item's own stair, then other movements of its kind that are not in the session yet. */
    List<SwapPage.Flights> around(Variant now, Suiting suiting, Predicate<String> present) {
        Movement own = catalogue.movementOf(now);
        List<SwapPage.Flights> flights = new ArrayList<>();
        flights.add(flight(own, suiting, now.id()));
        catalogue.movements().stream()
                .filter(each -> each.kind() == own.kind() && !each.id().equals(own.id()) && !present.test(each.id()))
                .sorted(Comparator.comparingDouble(each -> -each.purposes().nearness(own.purposes())))
                .limit(MOST_OTHERS)
                .forEach(each -> flights.add(flight(each, suiting, "")));
        return flights;
    }

    /** Every movement of these kinds that is not in the session yet. */
    List<SwapPage.Flights> of(List<Kind> kinds, Suiting suiting, Predicate<String> present) {
        return catalogue.movements().stream()
                .filter(each -> kinds.contains(each.kind()) && !present.test(each.id()))
                .map(each -> flight(each, suiting, ""))
                .sorted(Comparator.comparing((SwapPage.Flights flight) -> !flight.fits()))
                .toList();
    }

    private static SwapPage.Flights flight(Movement movement, Suiting suiting, String here) {
        List<Step> steps = new ArrayList<>();
        List<List<Variant>> levels = Flight.of(movement).levels();
        for (int level = 0; level < levels.size(); level++) {
            for (Variant variant : levels.get(level)) {
                steps.add(Step.of(
                        level, variant, suiting.fit(variant), variant.id().equals(here)));
            }
        }
        return new SwapPage.Flights(
                movement.id(), movement.name(), !here.isEmpty(), steps.stream().anyMatch(Step::fits), steps);
    }
}
