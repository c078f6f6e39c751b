package newel.program;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import newel.catalogue.Catalogue;
import newel.catalogue.Dose;
import newel.catalogue.Kind;
import newel.catalogue.Variant;
import newel.compose.Block;
import newel.compose.Doses;
import newel.compose.How;
import newel.compose.Item;
import newel.compose.Session;
import newel.compose.Suiting;
import newel.limit.Fit;
import newel.limit.Reason;
import newel.limit.Share;

/** The instructor's own changes to a session: swap, add, dose, move and remove. */
public final class Editing {
    /** A written reason shorter than this says nothing (design choice). */
    public static final int SHORTEST_REASON = 8;

    private final Catalogue catalogue;
    private final Suiting suiting;

    public Editing(Catalogue catalogue, Suiting suiting) {
        this.catalogue = catalogue;
        this.suiting = suiting;
    }

    /** @param override the written reason for something that does not fit, empty for none */
    public Edit swap(Session session, String movement, Variant variant, String override) {
        Item before = session.item(movement).orElseThrow();
        if (!variant.movement().equals(movement)
                && session.item(variant.movement()).isPresent()) {
            return new Edit.Refused(already(variant));
        }
        Dose dose = variant.movement().equals(movement)
                ? Doses.carried(before.dose(), variant, kind(variant))
                : Doses.beginner(variant, kind(variant));
        return placed(
                variant,
                dose,
                override,
                "Swapped %s for %s".formatted(name(before), variant.name()),
                item -> session.map(items -> replaced(items, movement, item)));
    }

    /** @param block position of the block that it is added to, at its end */
    public Edit add(Session session, int block, Variant variant, String override) {
        if (session.item(variant.movement()).isPresent()) {
            return new Edit.Refused(already(variant));
        }
        return placed(
                variant,
                Doses.beginner(variant, kind(variant)),
                override,
                "Added " + variant.name(),
                item -> appended(session, block, item));
    }

    private Edit placed(Variant variant, Dose dose, String override, String done, Function<Item, Session> place) {
        Fit fit = suiting.fit(variant);
        if (fit instanceof Fit.DoesNotFit not && override.strip().length() < SHORTEST_REASON) {
            return new Edit.Refused("%s does not fit: %s Write why you want it all the same, or choose another."
                    .formatted(variant.name(), text(not.reasons())));
        }
        Item item = item(variant, dose, fit, override.strip());
        String reason =
                item.override().isEmpty() ? done + "." : done + ", although it does not fit: " + item.override();
        return new Edit.Made(place.apply(item), reason);
    }

    private static Item item(Variant variant, Dose dose, Fit fit, String override) {
        Share share = fit instanceof Fit.FitsTrimmed trimmed ? trimmed.share() : Share.WHOLE;
        List<String> why = why(fit);
        String kept = fit instanceof Fit.DoesNotFit ? override : "";
        return new Item(variant.movement(), variant.id(), share, dose, How.CHOSEN, List.of(), why, kept);
    }

    private static List<String> why(Fit fit) {
        return switch (fit) {
            case Fit.Fits fits -> List.of();
            case Fit.FitsTrimmed trimmed -> texts(trimmed.reasons());
            case Fit.DoesNotFit not -> texts(not.reasons());
        };
    }

    /** Less than before is always allowed; more is refused where it breaks a limit that the dose before kept. */
    public Edit dose(Session session, String movement, Dose dose) {
        Item before = session.item(movement).orElseThrow();
        List<Reason> broken = newlyBroken(before, dose);
        if (!broken.isEmpty()) {
            return new Edit.Refused("This is too much: %s Choose less.".formatted(text(broken)));
        }
        return new Edit.Made(
                session.map(
                        items -> replaced(items, movement, before.withDose(dose).chosen())),
                "Changed the dose of " + name(before) + ".");
    }

    private List<Reason> newlyBroken(Item item, Dose dose) {
        if (!dose.asksMoreThan(item.dose())) {
            return List.of();
        }
        Variant variant = catalogue.variant(item.variant()).orElseThrow();
        List<Reason> before = suiting.broken(variant, item.share(), item.dose());
        return suiting.broken(variant, item.share(), dose).stream()
                .filter(reason -> !before.contains(reason))
                .toList();
    }

    public Edit remove(Session session, String movement) {
        Item before = session.item(movement).orElseThrow();
        if (session.items().count() == 1) {
            return new Edit.Refused("A program keeps at least one movement. Swap this one instead.");
        }
        return new Edit.Made(
                session.map(items -> items.stream()
                        .filter(item -> !item.movement().equals(movement))
                        .toList()),
                "Took out " + name(before) + ".");
    }

    /** @param by −1 one place earlier, +1 one place later; at the end of a block into the next block */
    public Edit move(Session session, String movement, int by) {
        String name = name(session.item(movement).orElseThrow());
        return Moving.moved(session, movement, by)
                .<Edit>map(moved -> new Edit.Made(moved, "Moved %s %s.".formatted(name, by < 0 ? "earlier" : "later")))
                .orElseGet(() ->
                        new Edit.Refused("%s is already at the %s.".formatted(name, by < 0 ? "beginning" : "end")));
    }

    private static Session appended(Session session, int block, Item item) {
        List<Block> blocks = new ArrayList<>(session.blocks());
        int at = Math.max(0, Math.min(block, blocks.size() - 1));
        List<Item> items = new ArrayList<>(blocks.get(at).items());
        items.add(item);
        blocks.set(at, blocks.get(at).withItems(items));
        return new Session(blocks);
    }

    static List<Item> replaced(List<Item> items, String movement, Item by) {
        return items.stream()
                .map(item -> item.movement().equals(movement) ? by : item)
                .toList();
    }

    private String already(Variant variant) {
        return "%s is in this session already. Swap or change it there."
                .formatted(catalogue.movementOf(variant).name());
    }

    private Kind kind(Variant variant) {
        return catalogue.movementOf(variant).kind();
    }

    private String name(Item item) {
        return catalogue.variant(item.variant()).map(Variant::name).orElse(item.variant());
    }

    private static List<String> texts(List<Reason> reasons) {
        return reasons.stream().map(Reason::text).toList();
    }

    private static String text(List<Reason> reasons) {
        return reasons.stream().map(Reason::text).collect(Collectors.joining(" "));
    }
}
