package newel.web.movement;

import java.util.List;
import java.util.Optional;
import newel.body.Demands;
import newel.catalogue.Catalogue;
import newel.catalogue.Movement;
import newel.catalogue.Variant;
import newel.handout.Pictures;
import newel.handout.RangeWords;
import newel.limit.Fit;
import newel.limit.Share;
import newel.limit.VariantDemands;
import newel.program.Program;
import newel.web.Practice;
import newel.web.stair.Drawn;
import newel.web.stair.Step;

/** Makes the page of one form. */
final class VariantPages {
    private final Catalogue catalogue;
    private final VariantDemands demands;

    VariantPages(Practice practice) {
        this.catalogue = practice.catalogue();
        this.demands = practice.demands();
    }

    VariantPage page(
            Variant variant, Optional<Chosen> chosen, Optional<Program> program, List<FindPage.Option> clients) {
        Movement movement = catalogue.movementOf(variant);
        Demands asked = demands.at(variant, Share.WHOLE);
        Share share = share(variant, chosen);
        String look = chosen.map(Chosen::look).orElse("");
        Neighbours neighbours = new Neighbours(catalogue, demands, chosen);
        return new VariantPage(
                chosen.map(Chosen::header).orElse(null),
                chosen.map(Chosen::id).orElse(""),
                MovementRoutes.query(chosen),
                clients,
                MovementRoutes.AT + "/" + movement.id() + "/" + variant.id(),
                MovementRoutes.path(movement, chosen),
                movement.id(),
                movement.name(),
                variant.id(),
                variant.name(),
                step(variant, chosen),
                Pictures.of(variant, share, look),
                Drawn.motion(variant, share, look),
                RangeWords.of(share),
                variant.words(),
                Facts.of(variant),
                Trained.of(variant.purposes()),
                Asks.angles(asked),
                Asks.loads(asked, chosen),
                Asks.loadNote(chosen),
                Asks.others(asked),
                neighbours.easier(variant),
                neighbours.harder(variant),
                chosen.map(each -> InProgram.of(catalogue, each, program, variant))
                        .orElse(null));
    }

    private static Share share(Variant variant, Optional<Chosen> chosen) {
        return chosen.map(each -> each.fit(variant)).orElse(null) instanceof Fit.FitsTrimmed trimmed
                ? trimmed.share()
                : Share.WHOLE;
    }

    static Step step(Variant variant, Optional<Chosen> chosen) {
        return chosen.map(each -> each.step(0, variant, false)).orElseGet(() -> Step.of(0, variant));
    }
}
