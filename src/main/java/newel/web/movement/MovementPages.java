package newel.web.movement;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import newel.catalogue.Catalogues;
import newel.catalogue.FlightPlan;
import newel.catalogue.Movement;
import newel.web.client.ClientHeader;
import newel.web.stair.Stair;
import newel.web.stair.Step;

/** Makes a movement's page. */
final class MovementPages {
    /** @param now ids of the variants in the client's program */
    static MovementPage page(
            Movement movement, Optional<Chosen> chosen, Set<String> now, List<FindPage.Option> clients) {
        return new MovementPage(
                chosen.map(Chosen::header).orElse((ClientHeader) null),
                chosen.map(Chosen::id).orElse(""),
                MovementRoutes.query(chosen),
                clients,
                MovementRoutes.AT + "/" + movement.id(),
                movement.name(),
                movement.why(),
                MovementWords.capital(MovementWords.plain(movement.kind())),
                chosen.map(each -> Cards.verdict(each, movement.variants())).orElse(""),
                Stair.of(movement, place -> step(place, chosen, now)),
                Trained.of(movement.purposes()),
                movement.faults(),
                movement.claims(),
                movement.standingOnly(),
                Catalogues.about());
    }

    private static Step step(FlightPlan.Place place, Optional<Chosen> chosen, Set<String> now) {
        return chosen.map(each -> each.step(
                        place.level(),
                        place.variant(),
                        now.contains(place.variant().id())))
                .orElseGet(() -> Step.of(place.level(), place.variant()));
    }

    private MovementPages() {}
}
