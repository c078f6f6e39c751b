package newel.web.program;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import newel.catalogue.Catalogue;
import newel.catalogue.Flight;
import newel.catalogue.Kind;
import newel.catalogue.Movement;
import newel.catalogue.Variant;
import newel.compose.Block;
import newel.compose.Session;
import newel.web.Practice;
import newel.web.client.ClientHeader;
import newel.web.form.Typed;
import newel.web.stair.Step;

/** Makes the stairs that an item may be swapped along, or added from. */
final class SwapPages {
    /** Other movements shown, nearest in purpose first. */
    private static final int MOST_OTHERS = 12;

    private final Practice practice;
    private final Catalogue catalogue;

    SwapPages(Practice practice) {
        this.practice = practice;
        this.catalogue = practice.catalogue();
    }

    SwapPage swap(Known known, DayOfWeek day, Variant now, Typed typed, String fault) {
        Session session = known.program().newest().session(day);
        return page(
                known,
                day,
                "Swap: " + now.name(),
                "The easiest form stands first, the hardest last. Each shows how far this client may go.",
                "/items/" + now.movement() + "/swap",
                around(now, known, movement -> session.item(movement).isPresent()),
                typed,
                fault);
    }

    SwapPage add(Known known, DayOfWeek day, int block, Typed typed, String fault) {
        Session session = known.program().newest().session(day);
        Block to = session.blocks().get(block);
        return page(
                known,
                day,
                "Add to the " + to.kind().words().toLowerCase(Locale.ROOT),
                "Those with a fitting form come first.",
                "/blocks/" + block + "/addition",
                of(to.kind().kinds(), known, movement -> session.item(movement).isPresent()),
                typed,
                fault);
    }

    private SwapPage page(
            Known known,
            DayOfWeek day,
            String title,
            String intro,
            String action,
            List<SwapPage.Flights> flights,
            Typed typed,
            String fault) {
        String base = Knowing.base(known.client());
        return new SwapPage(
                ClientHeader.of(known.client(), practice),
                Knowing.page(known, day),
                known.program().newest().number(),
                Knowing.word(day),
                title,
                intro,
                base + action,
                flights,
                typed.one("variant"),
                typed.one("override"),
                fault);
    }

    /** The item's own stair, then other movements of its kind that are not in the session yet. */
    private List<SwapPage.Flights> around(Variant now, Known known, Predicate<String> present) {
        Movement own = catalogue.movementOf(now);
        List<SwapPage.Flights> flights = new ArrayList<>();
        flights.add(flight(own, known, now.id()));
        catalogue.movements().stream()
                .filter(each -> each.kind() == own.kind() && !each.id().equals(own.id()) && !present.test(each.id()))
                .sorted(Comparator.comparingDouble(each -> -each.purposes().nearness(own.purposes())))
                .limit(MOST_OTHERS)
                .forEach(each -> flights.add(flight(each, known, "")));
        return flights;
    }

    /** Every movement of these kinds that is not in the session yet. */
    private List<SwapPage.Flights> of(List<Kind> kinds, Known known, Predicate<String> present) {
        return catalogue.movements().stream()
                .filter(each -> kinds.contains(each.kind()) && !present.test(each.id()))
                .map(each -> flight(each, known, ""))
                .sorted(Comparator.comparing((SwapPage.Flights flight) -> !flight.fits()))
                .toList();
    }

    private static SwapPage.Flights flight(Movement movement, Known known, String here) {
        List<Step> steps = new ArrayList<>();
        List<List<Variant>> levels = Flight.of(movement).levels();
        for (int level = 0; level < levels.size(); level++) {
            for (Variant variant : levels.get(level)) {
                steps.add(Step.of(
                        level,
                        variant,
                        known.suiting().fit(variant),
                        variant.id().equals(here),
                        known.client().look()));
            }
        }
        return new SwapPage.Flights(
                movement.id(), movement.name(), !here.isEmpty(), steps.stream().anyMatch(Step::fits), steps);
    }
}
