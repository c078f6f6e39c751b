package newel.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import newel.catalogue.Catalogue;
import newel.catalogue.Kind;
import newel.catalogue.Movement;
import newel.catalogue.Purpose;
import newel.catalogue.Region;

/**
 * Drafts a session by fixed rules: take the movements in the order in which a session misses them most, then fit the
 * minutes by the number of items, passes and the rest between them.
 */
public final class FirstDraft {
    private final Catalogue catalogue;
    private final Timing timing;

    public FirstDraft(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.timing = new Timing(catalogue);
    }

    public Draft draft(Wish wish, Suiting suiting) {
        Shortlist shortlist = new Shortlist(catalogue, wish, suiting);
        Parts parts = new Parts(warmUp(shortlist), balance(shortlist), rounds(shortlist), coolDown(shortlist));
        Session session = new Fitted(timing, wish.minutes() * 60).fit(parts);
        return new Draft(session, shortlist.leftOut());
    }

    private static List<Item> warmUp(Shortlist shortlist) {
        return Stream.of(
                        shortlist.named("shoulder-roll"),
                        shortlist.best(Kind.PULSE, movement -> !armWork(movement)),
                        shortlist.best(Kind.PULSE, FirstDraft::armWork),
                        shortlist.named("ankle-pump"),
                        shortlist.best(
                                Kind.MOBILITY,
                                movement -> !movement.purposes().mobility().contains(Region.NECK)),
                        shortlist.best(Kind.PULSE, movement -> true))
                .flatMap(Optional::stream)
                .toList();
    }

    private static boolean armWork(Movement movement) {
        return movement.purposes().weight(Purpose.SHOULDERS) > 0;
    }

    private static List<Item> balance(Shortlist shortlist) {
        return shortlist.best(Kind.BALANCE, movement -> true).stream().toList();
    }

    /** In the first two rounds every major muscle group has its turn; upper and lower body take turns. */
    private static List<Item> rounds(Shortlist shortlist) {
        return Stream.of(
                        shortlist.best(Kind.STRENGTH, Purpose.LEGS),
                        shortlist.best(Kind.STRENGTH, Purpose.BACK),
                        shortlist.best(Kind.STRENGTH, Purpose.SHOULDERS),
                        shortlist.best(Kind.STRENGTH, Purpose.HIPS),
                        shortlist.best(Kind.STRENGTH, Purpose.CHEST),
                        shortlist.best(Kind.STRENGTH, Purpose.ABDOMEN),
                        shortlist.best(Kind.STRENGTH, Purpose.ARMS),
                        shortlist.best(Kind.STRENGTH, Purpose.LEGS),
                        shortlist.best(Kind.STRENGTH, movement -> true),
                        shortlist.best(Kind.STRENGTH, movement -> true),
                        shortlist.best(Kind.STRENGTH, movement -> true),
                        shortlist.best(Kind.STRENGTH, movement -> true))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Stretches for what sits short in older people first (common practice), a neck turn and calm breath at the end. */
    private static List<Item> coolDown(Shortlist shortlist) {
        List<Item> items = new ArrayList<>();
        for (String movement : List.of(
                "hamstring-stretch",
                "chest-stretch",
                "calf-stretch",
                "glute-stretch",
                "side-stretch",
                "hip-flexor-stretch")) {
            shortlist.named(movement).ifPresent(items::add);
        }
        shortlist.named("neck-turn").ifPresent(items::add);
        shortlist.named("calm-breathing").ifPresent(items::add);
        return items;
    }

    /** Every item that may be used, in each part the most missed first. */
    record Parts(List<Item> warmUp, List<Item> balance, List<Item> rounds, List<Item> coolDown) {}
}
