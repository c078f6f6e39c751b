package newel.web.movement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import newel.catalogue.Catalogue;
import newel.catalogue.FlightPlan;
import newel.catalogue.Movement;
import newel.catalogue.Variant;
import newel.limit.Fit;
import newel.limit.Share;
import newel.web.stair.Drawn;
import newel.web.stair.Step;

/** Makes the card of a movement: what it is, and how much of what is meant fits the chosen client. */
record Cards(Catalogue catalogue, Filters filters, Optional<Chosen> chosen) {
    FindPage.Card card(Movement movement) {
        List<Variant> meant = movement.variants().stream()
                .filter(variant -> filters.without(Filters.FITS).pass(movement, variant))
                .toList();
        Variant reference = catalogue.variant(movement.reference()).orElseThrow();
        return new FindPage.Card(
                movement.id(),
                MovementRoutes.path(movement, chosen),
                movement.name(),
                movement.why(),
                Drawn.at(reference, Share.WHOLE, chosen.map(Chosen::look).orElse("")),
                forms(movement, meant),
                positions(meant),
                chosen.map(each -> verdict(each, meant)).orElse(""),
                bars(movement, meant),
                chosen.map(each -> told(each, meant)).orElse(List.of()));
    }

    private static String forms(Movement movement, List<Variant> meant) {
        int all = movement.variants().size();
        return meant.size() == all ? MovementWords.forms(all) : meant.size() + " of " + MovementWords.forms(all);
    }

    private static String positions(List<Variant> meant) {
        return MovementWords.list(meant.stream()
                .map(Variant::position)
                .distinct()
                .sorted()
                .map(MovementWords::of)
                .toList());
    }

    /** "5 fit, 1 trimmed, 3 out" */
    static String verdict(Chosen chosen, List<Variant> variants) {
        List<String> parts = new ArrayList<>();
        part(parts, chosen, variants, "fits", " fit");
        part(parts, chosen, variants, "part", " trimmed");
        part(parts, chosen, variants, "not", " out");
        return String.join(", ", parts);
    }

    private static void part(List<String> parts, Chosen chosen, List<Variant> variants, String state, String words) {
        long count = variants.stream()
                .filter(variant -> Step.state(chosen.fit(variant)).equals(state))
                .count();
        if (count > 0) {
            parts.add(count + (count == 1 && state.equals("fits") ? " fits" : words));
        }
    }

    /** A hundred wide and forty high; the easiest step still has a fourth of the height. */
    private List<FindPage.Bar> bars(Movement movement, List<Variant> meant) {
        FlightPlan plan = FlightPlan.of(movement);
        List<FindPage.Bar> bars = new ArrayList<>();
        int width = 100 / plan.places().size();
        for (FlightPlan.Place place : plan.places()) {
            int height = 10 + 30 * (place.level() + 1) / plan.levels();
            bars.add(bar(place.variant(), meant, bars.size() * width, width, height));
        }
        return bars;
    }

    private FindPage.Bar bar(Variant variant, List<Variant> meant, int x, int width, int height) {
        Optional<Step> step = chosen.filter(each -> meant.contains(variant)).map(each -> each.step(0, variant, false));
        String state = step.map(Step::state).orElse("other");
        return new FindPage.Bar(
                state, x, 40 - height, width, height, step.map(Step::percent).orElse(100));
    }

    private static List<FindPage.Told> told(Chosen chosen, List<Variant> meant) {
        return meant.stream()
                .filter(variant -> !(chosen.fit(variant) instanceof Fit.Fits))
                .map(variant -> chosen.step(0, variant, false))
                .map(step -> new FindPage.Told(step.name(), step.words(), step.reasons()))
                .toList();
    }
}
