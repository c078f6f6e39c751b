package newel.compose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import newel.catalogue.Catalogue;
import newel.catalogue.Kind;
import newel.catalogue.Movement;
import newel.catalogue.Purpose;
import newel.catalogue.Region;
import newel.compose.exact.Demand;
import newel.compose.exact.Problem;

/** The wishes that a session has to hold. Prices are design choices: what the instructor said goes last. */
final class Asking {
    private static final int STRETCHED = 2;
    private static final int GROUP = 4;
    private static final int GOAL = 5;
    private static final int BALANCE = 6;
    private static final int MORE = 7;
    private static final int HAND = 9;
    /** Below these minutes there is no room for all seven groups in one session. */
    private static final int ALL_GROUPS_FROM = 13;

    private static final List<Purpose> FIRST_GROUPS = List.of(Purpose.LEGS, Purpose.BACK, Purpose.SHOULDERS);

    private static final String IN = " in it";

    private final Catalogue catalogue;
    private final Wish wish;

    Asking(Catalogue catalogue, Wish wish) {
        this.catalogue = catalogue;
        this.wish = wish;
    }

    /** Of balance and rounds. */
    List<Rule.Asked> middle() {
        List<Rule.Asked> asked = new ArrayList<>();
        wish.groups().stream()
                .sorted()
                .filter(group -> wish.minutes() >= ALL_GROUPS_FROM || FIRST_GROUPS.contains(group))
                .forEach(group -> asked.add(worked(group)));
        asked.add(new Rule.Asked("Balance work", BALANCE, 1, (option, part) -> option.kind() == Kind.BALANCE));
        if (!wish.goals().isEmpty()) {
            asked.add(new Rule.Asked(
                    "Two movements for the first goal", GOAL, 2, (option, part) -> servesFirstGoal(option)));
        }
        wish.hand().moreOf().stream()
                .sorted()
                .forEach(purpose -> asked.add(new Rule.Asked(
                        "More for the " + plain(purpose), MORE, 2, (option, part) -> works(option, purpose))));
        hand(asked, true);
        return asked;
    }

    /** Of warm-up and cool-down: what balance and rounds worked most is made ready before and stretched after. */
    List<Rule.Asked> ends(Context context) {
        List<Rule.Asked> asked = new ArrayList<>();
        int most = wish.minutes() < ALL_GROUPS_FROM ? 1 : wish.minutes() < 25 ? 2 : wish.minutes() < 35 ? 3 : 4;
        context.mostWorked().stream()
                .limit(most)
                .forEach(group -> asked.add(new Rule.Asked(
                        "Loosening for the " + plain(group),
                        STRETCHED,
                        1,
                        (option, part) -> part == BlockKind.WARM_UP && Context.loosens(option, group))));
        context.mostWorked().stream()
                .filter(group -> group != Purpose.ARMS)
                .limit(most)
                .forEach(group -> asked.add(new Rule.Asked(
                        "A stretch for the " + plain(group),
                        STRETCHED,
                        1,
                        (option, part) -> part == BlockKind.COOL_DOWN && Context.stretches(option, group))));
        hand(asked, false);
        return asked;
    }

    private void hand(List<Rule.Asked> asked, boolean middle) {
        List<Item> kept = wish.hand().kept().entrySet().stream()
                .filter(entry -> inMiddle(entry.getValue()) == middle)
                .map(Map.Entry::getKey)
                .sorted(Comparator.comparing(Item::movement))
                .toList();
        chunks(kept, (kept.size() + Demand.MOST - 1) / Demand.MOST, some -> asked.add(kept(some)));
        List<Movement> pinned = wish.hand().pinned().stream()
                .map(id -> catalogue.movement(id).orElseThrow())
                .filter(movement -> inMiddle(movement.kind()) == middle)
                .sorted(Comparator.comparing(Movement::id))
                .toList();
        chunks(pinned, Math.min(pinned.size(), Problem.MOST_DEMANDS - asked.size()), some -> asked.add(pinned(some)));
    }

    private Rule.Asked kept(List<Item> items) {
        String names = items.stream()
                .map(item -> catalogue.variant(item.variant()).orElseThrow().name())
                .collect(Collectors.joining(", "));
        return new Rule.Asked(
                names + " as it stands", HAND, items.size(), (option, part) -> items.contains(option.item()));
    }

    private static Rule.Asked pinned(List<Movement> movements) {
        return new Rule.Asked(
                movements.stream().map(Movement::name).collect(Collectors.joining(", ")) + IN,
                HAND,
                movements.size(),
                (option, part) -> movements.contains(option.movement()));
    }

    /** Parts of nearly equal size. */
    private static <T> void chunks(List<T> all, int parts, Consumer<List<T>> each) {
        for (int part = 0; part < parts; part++) {
            each.accept(all.subList(all.size() * part / parts, all.size() * (part + 1) / parts));
        }
    }

    private static boolean inMiddle(BlockKind part) {
        return part == BlockKind.ROUND || part == BlockKind.BALANCE;
    }

    private static boolean inMiddle(Kind kind) {
        return switch (kind) {
            case STRENGTH, PULSE, BALANCE -> true;
            case MOBILITY, STRETCH, BREATH -> false;
        };
    }

    static String in(Movement movement) {
        return movement.name() + IN;
    }

    private Rule.Asked worked(Purpose group) {
        return new Rule.Asked(
                "Strength for the " + plain(group), GROUP, 1, (option, part) -> strengthens(option, group));
    }

    private static boolean strengthens(Option option, Purpose group) {
        return option.kind() == Kind.STRENGTH && works(option, group);
    }

    private static boolean works(Option option, Purpose purpose) {
        return option.purposes().weight(purpose) >= Option.WORKED;
    }

    private boolean servesFirstGoal(Option option) {
        var goal = wish.goals().getFirst();
        for (Purpose purpose : Purpose.values()) {
            if (goal.weight(purpose) >= Option.WORKED && works(option, purpose)) {
                return true;
            }
        }
        for (Region region : goal.mobility()) {
            if (option.mobility().contains(region)) {
                return true;
            }
        }
        return false;
    }

    static Rule filled(Wish wish) {
        return new Rule.Filled(wish.minutes());
    }

    static String plain(Purpose purpose) {
        return purpose.name().toLowerCase(Locale.ROOT);
    }
}
