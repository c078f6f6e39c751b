package newel.web.movement;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.stream.Stream;
import newel.catalogue.Catalogue;
import newel.catalogue.Kind;
import newel.catalogue.Movement;
import newel.catalogue.Position;
import newel.catalogue.Purpose;
import newel.catalogue.Region;
import newel.catalogue.Support;
import newel.catalogue.Variant;
import newel.client.Goal;
import newel.web.form.Choice;

/** One thing to choose by: options, of which one is taken or none. */
record Criterion(String name, String label, List<Group> groups) {
    /** @param label empty when the options need no heading */
    record Group(String label, List<Option> options) {}

    record Option(String value, String label, BiPredicate<Movement, Variant> passes) {}

    /** From this weight on it is a main or a strong helping purpose; the week counts so too (design choice). */
    private static final int STRONG = 2;

    static final List<Criterion> ALL = List.of(
            new Criterion("trains", "Trains", List.of(muscles(), balanceAndPulse(), regions())),
            plain("goal", "For the goal", Goal.values(), Goal::words, (goal, m, v) -> goal.servedBy(v.purposes())),
            plain("kind", "Kind", Kind.values(), Criterion::words, (kind, m, v) -> m.kind() == kind),
            plain("position", "Position", Position.values(), Criterion::words, (at, m, v) -> v.position() == at),
            plain("support", "Support", Support.values(), Criterion::words, (by, m, v) -> v.support() == by));

    private interface Passes<E> {
        boolean test(E constant, Movement movement, Variant variant);
    }

    Optional<Option> option(String value) {
        return groups.stream()
                .flatMap(group -> group.options().stream())
                .filter(option -> option.value().equals(value))
                .findFirst();
    }

    /** Without what nothing in the catalogue passes: nobody should look for it in vain. */
    Criterion offered(Catalogue catalogue) {
        return new Criterion(
                name,
                label,
                groups.stream()
                        .map(group -> new Group(
                                group.label(),
                                group.options().stream()
                                        .filter(option -> catalogue.variants().stream()
                                                .anyMatch(variant ->
                                                        option.passes().test(catalogue.movementOf(variant), variant)))
                                        .toList()))
                        .toList());
    }

    private static Group muscles() {
        return new Group(
                "Muscle group",
                purposes().filter(Purpose::muscleGroup).map(Criterion::works).toList());
    }

    private static Group balanceAndPulse() {
        return new Group(
                "Steadiness and pulse",
                purposes()
                        .filter(purpose -> !purpose.muscleGroup())
                        .map(Criterion::works)
                        .toList());
    }

    private static Stream<Purpose> purposes() {
        return Arrays.stream(Purpose.values());
    }

    private static Option works(Purpose purpose) {
        return new Option(
                Choice.of(purpose),
                MovementWords.capital(MovementWords.plain(purpose)),
                (m, v) -> v.purposes().weight(purpose) >= STRONG);
    }

    private static Group regions() {
        return new Group(
                "Keeps moving",
                Arrays.stream(Region.values())
                        .map(region -> new Option(
                                "moves-" + Choice.of(region),
                                "Moves the " + MovementWords.plain(region),
                                (m, v) -> v.purposes().mobility().contains(region)))
                        .toList());
    }

    private static <E extends Enum<E>> Criterion plain(
            String name, String label, E[] constants, Function<E, String> words, Passes<E> passes) {
        List<Option> options = Arrays.stream(constants)
                .map(each -> new Option(Choice.of(each), words.apply(each), (m, v) -> passes.test(each, m, v)))
                .toList();
        return new Criterion(name, label, List.of(new Group("", options)));
    }

    private static String words(Kind kind) {
        return MovementWords.capital(MovementWords.plain(kind));
    }

    private static String words(Position position) {
        return MovementWords.capital(MovementWords.of(position));
    }

    private static String words(Support support) {
        return MovementWords.capital(MovementWords.of(support));
    }
}
