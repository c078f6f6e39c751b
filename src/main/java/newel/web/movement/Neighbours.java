package newel.web.movement;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import newel.catalogue.Axis;
import newel.catalogue.Catalogue;
import newel.catalogue.LinkChange;
import newel.catalogue.Variant;
import newel.limit.Share;
import newel.limit.VariantDemands;
import newel.web.stair.LinkWords;
import newel.web.stair.Step;

/** The ends of a form's links, with what falls and what rises on the way there. */
record Neighbours(Catalogue catalogue, VariantDemands demands, Optional<Chosen> chosen) {
    List<VariantPage.Neighbour> easier(Variant variant) {
        return variant.easier().stream()
                .map(link -> {
                    Variant below = catalogue.variant(link.easier()).orElseThrow();
                    return neighbour(variant, below, link.axis(), LinkWords.down(link.axis()), down(variant, below));
                })
                .toList();
    }

    /** The same links from below: what falls on the way down rises on the way up. */
    List<VariantPage.Neighbour> harder(Variant variant) {
        return catalogue.harder(variant).stream()
                .flatMap(above -> above.easier().stream()
                        .filter(link -> link.easier().equals(variant.id()))
                        .map(link -> neighbour(
                                variant, above, link.axis(), LinkWords.up(link.axis()), turned(down(above, variant)))))
                .toList();
    }

    private LinkChange down(Variant harder, Variant easier) {
        return LinkChange.between(
                harder, form(harder).demands(), easier, form(easier).demands());
    }

    private static LinkChange turned(LinkChange down) {
        return new LinkChange(down.rises(), down.falls());
    }

    private VariantPage.Neighbour neighbour(Variant from, Variant to, Axis axis, String by, LinkChange change) {
        DemandWords.Form here = form(from);
        DemandWords.Form there = form(to);
        Step step = VariantPages.step(to, chosen);
        return new VariantPage.Neighbour(
                MovementRoutes.path(to, chosen),
                to.name(),
                step.drawn(),
                by,
                DemandWords.axis(axis, here, there),
                step,
                told(change.falls(), here, there),
                told(change.rises(), here, there));
    }

    private static List<String> told(Set<String> names, DemandWords.Form here, DemandWords.Form there) {
        return names.stream().map(name -> DemandWords.change(name, here, there)).toList();
    }

    private DemandWords.Form form(Variant variant) {
        return new DemandWords.Form(variant, demands.at(variant, Share.WHOLE));
    }
}
