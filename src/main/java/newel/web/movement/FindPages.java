package newel.web.movement;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import newel.catalogue.Catalogue;
import newel.catalogue.Kind;
import newel.catalogue.Movement;
import newel.catalogue.Variant;
import newel.store.ClientStore;
import newel.web.form.KitWords;

/** Makes the find page from what is asked. */
final class FindPages {
    private final Catalogue catalogue;
    private final List<Criterion> criteria;

    FindPages(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.criteria =
                Criterion.ALL.stream().map(each -> each.offered(catalogue)).toList();
    }

    FindPage page(FilterForm form, Optional<Chosen> chosen, List<ClientStore.Opened> clients) {
        Filters filters = form.filters();
        String client = chosen.map(Chosen::id).orElse("");
        return new FindPage(
                chosen.map(Chosen::header).orElse(null),
                client,
                form.typed(),
                criteria.stream().map(each -> select(each, filters)).toList(),
                kit(filters),
                filters.has(Filters.HOME),
                filters.has(Filters.FITS),
                Picker.of(clients, client),
                form.faults(),
                found(form, chosen));
    }

    private static FindPage.Select select(Criterion criterion, Filters filters) {
        List<String> taken = filters.values(criterion.name());
        List<FindPage.Group> groups = criterion.groups().stream()
                .map(group -> new FindPage.Group(
                        group.label(),
                        group.options().stream()
                                .map(each ->
                                        new FindPage.Option(each.value(), each.label(), taken.contains(each.value())))
                                .toList()))
                .toList();
        return new FindPage.Select(criterion.name(), criterion.label(), groups, !taken.isEmpty());
    }

    private static List<FindPage.Option> kit(Filters filters) {
        Map<String, String> labels = KitWords.labels();
        return labels.entrySet().stream()
                .map(each -> new FindPage.Option(
                        each.getKey(),
                        each.getValue(),
                        filters.values(Filters.KIT).contains(each.getKey())))
                .toList();
    }

    private FindPage.Found found(FilterForm form, Optional<Chosen> chosen) {
        List<Movement> movements = passing(form.filters());
        long forms = movements.stream()
                .flatMap(movement -> meant(movement, form.filters()))
                .count();
        String count = "%s of %d, in %s."
                .formatted(
                        MovementWords.movements(movements.size()),
                        catalogue.movements().size(),
                        MovementWords.forms(forms));
        return new FindPage.Found(count, taken(form.filters(), chosen), sections(form, movements, chosen));
    }

    private List<FindPage.Taken> taken(Filters filters, Optional<Chosen> chosen) {
        String client = chosen.map(Chosen::id).orElse("");
        return filters.all().stream()
                .map(filter -> {
                    Filters others = filters.without(filter.name());
                    int left = passing(others).size();
                    String then = left == 0 ? "still nothing" : "then " + MovementWords.movements(left);
                    return new FindPage.Taken(filter.label(), others.path(client), then);
                })
                .toList();
    }

    private List<Movement> passing(Filters filters) {
        return catalogue.movements().stream()
                .filter(movement -> meant(movement, filters).findAny().isPresent())
                .toList();
    }

    private static Stream<Variant> meant(Movement movement, Filters filters) {
        return movement.variants().stream().filter(variant -> filters.pass(movement, variant));
    }

    /** What text finds stands in one list, the best first; else movements stand under their kind. */
    private List<FindPage.Section> sections(FilterForm form, List<Movement> movements, Optional<Chosen> chosen) {
        if (form.filters().has(Filters.TEXT)) {
            List<Movement> best = movements.stream()
                    .sorted(Comparator.comparingInt(movement -> rank(movement, form)))
                    .toList();
            return Stream.of(section("Best first", best, form, chosen))
                    .filter(section -> !section.cards().isEmpty())
                    .toList();
        }
        return Arrays.stream(Kind.values())
                .map(kind -> section(
                        MovementWords.capital(MovementWords.plain(kind)),
                        movements.stream()
                                .filter(movement -> movement.kind() == kind)
                                .sorted(Comparator.comparing(Movement::name))
                                .toList(),
                        form,
                        chosen))
                .filter(section -> !section.cards().isEmpty())
                .toList();
    }

    private static int rank(Movement movement, FilterForm form) {
        return meant(movement, form.filters())
                .mapToInt(variant -> form.hits().indexOf(variant.id()))
                .min()
                .orElse(Integer.MAX_VALUE);
    }

    private FindPage.Section section(String title, List<Movement> movements, FilterForm form, Optional<Chosen> chosen) {
        Cards cards = new Cards(catalogue, form.filters(), chosen);
        return new FindPage.Section(title, movements.stream().map(cards::card).toList());
    }
}
