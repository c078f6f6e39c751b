package newel.web.movement;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import newel.catalogue.Kit;
import newel.store.SearchStore;
import newel.web.form.Choice;
import newel.web.form.KitWords;

/**
 * Reads what is asked for in the address.
 *
 * @param typed the text as it was typed
 * @param hits variants that the text finds, the best first
 * @param faults what cannot be asked for, each in a sentence
 */
record FilterForm(Filters filters, String typed, List<String> hits, List<String> faults) {
    /** Longer text is no search (design choice). */
    private static final int LONGEST = 200;

    static FilterForm of(Context ctx, Optional<Chosen> chosen, Function<String, List<String>> search) {
        List<Filters.Filter> taken = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        List<String> hits = text(ctx, search, taken, faults);
        Criterion.ALL.forEach(criterion -> criterion(ctx, criterion, taken, faults));
        kit(ctx, taken, faults);
        home(ctx, chosen, taken, faults);
        fits(ctx, chosen, taken, faults);
        return new FilterForm(new Filters(taken), shortened(one(ctx, Filters.TEXT)), hits, List.copyOf(faults));
    }

    private static List<String> text(
            Context ctx, Function<String, List<String>> search, List<Filters.Filter> taken, List<String> faults) {
        String typed = shortened(one(ctx, Filters.TEXT));
        if (typed.isEmpty()) {
            return List.of();
        }
        if (!SearchStore.holdsWords(typed)) {
            faults.add("“" + typed + "” holds no word to look for.");
            return List.of();
        }
        List<String> hits = search.apply(typed);
        Set<String> found = new HashSet<>(hits);
        taken.add(
                new Filters.Filter(Filters.TEXT, List.of(typed), "“" + typed + "”", (m, v) -> found.contains(v.id())));
        return hits;
    }

    private static void criterion(Context ctx, Criterion criterion, List<Filters.Filter> taken, List<String> faults) {
        String value = one(ctx, criterion.name());
        if (value.isEmpty()) {
            return;
        }
        criterion
                .option(value)
                .ifPresentOrElse(
                        option -> taken.add(new Filters.Filter(
                                criterion.name(),
                                List.of(value),
                                criterion.label() + ": " + option.label().toLowerCase(Locale.ROOT),
                                option.passes())),
                        () -> faults.add(unknown(criterion.label(), value)));
    }

    /** Forms that need nothing beyond what is ticked. */
    private static void kit(Context ctx, List<Filters.Filter> taken, List<String> faults) {
        Set<Kit> there = EnumSet.noneOf(Kit.class);
        for (String value : ctx.queryParams(Filters.KIT)) {
            Choice.read(Kit.class, value).ifPresentOrElse(there::add, () -> faults.add(unknown("Kit", value)));
        }
        if (!there.isEmpty()) {
            List<String> words = there.stream()
                    .map(KitWords::of)
                    .map(label -> label.toLowerCase(Locale.ROOT))
                    .toList();
            taken.add(new Filters.Filter(
                    Filters.KIT,
                    Choice.all(there),
                    "Only with " + MovementWords.list(words),
                    (m, v) -> there.containsAll(v.kit())));
        }
    }

    private static void home(Context ctx, Optional<Chosen> chosen, List<Filters.Filter> taken, List<String> faults) {
        if (ticked(ctx, Filters.HOME, "home", faults) && chosen.isPresent()) {
            Set<Kit> there = chosen.get().client().home().kit();
            taken.add(new Filters.Filter(
                    Filters.HOME,
                    List.of(Filters.YES),
                    "Only with what the home of " + chosen.get().name() + " has",
                    (m, v) -> there.containsAll(v.kit())));
        }
    }

    private static void fits(Context ctx, Optional<Chosen> chosen, List<Filters.Filter> taken, List<String> faults) {
        if (ticked(ctx, Filters.FITS, "fits", faults) && chosen.isPresent()) {
            taken.add(new Filters.Filter(
                    Filters.FITS,
                    List.of(Filters.YES),
                    "Only what fits " + chosen.get().name(),
                    (m, v) -> chosen.get().may(v)));
        }
    }

    private static boolean ticked(Context ctx, String name, String label, List<String> faults) {
        String value = one(ctx, name);
        if (!value.isEmpty() && !value.equals(Filters.YES)) {
            faults.add(unknown(label, value));
        }
        return value.equals(Filters.YES);
    }

    private static String unknown(String label, String value) {
        return "%s: there is no “%s” to choose.".formatted(label, shortened(value));
    }

    private static String one(Context ctx, String name) {
        String value = ctx.queryParam(name);
        return value == null ? "" : value.strip();
    }

    private static String shortened(String typed) {
        return typed.length() <= LONGEST ? typed : typed.substring(0, LONGEST);
    }
}
