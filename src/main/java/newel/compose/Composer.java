package newel.compose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import newel.catalogue.Catalogue;
import newel.compose.exact.Problem.Window;

/** Composes one session: balance and rounds first, then the warm-up and cool-down that belong to them. */
public final class Composer {
    private static final double FILLED = Costs.SHIPPED.share("filled");
    /** Longer than any session. */
    private static final int WITHOUT_END = 1 << 16;

    private static final int WARM_UP_ROUNDS = 5;
    private static final int WARM_UP_MINUTES = 25;

    private final Catalogue catalogue;

    public Composer(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    public Composed compose(Wish wish, Suiting suiting) {
        return new Composing(wish, suiting).compose();
    }

    /** Composes for nobody, so that the first who waits does not wait for the machine to learn how. */
    public void warmUp(Suiting suiting) {
        for (int round = 0; round < WARM_UP_ROUNDS; round++) {
            for (Level level : Level.values()) {
                compose(Wish.of(List.of(), WARM_UP_MINUTES, Levels.all(level)), suiting);
            }
        }
    }

    /** One wish of one person on its way. */
    private final class Composing {
        private final Wish wish;
        private final Suiting suiting;
        private final Asking asking;
        private final Map<Set<String>, Pool> pools = new HashMap<>();
        private final List<GivenUp> unfit = new ArrayList<>();

        Composing(Wish asked, Suiting suiting) {
            this.wish = asked;
            this.suiting = suiting;
            Set<String> pinned = new TreeSet<>(asked.hand().pinned());
            pinned.removeIf(movement -> {
                Optional<GivenUp> given = new Unfit(catalogue, suiting, this::pool).of(movement);
                given.ifPresent(unfit::add);
                return given.isPresent();
            });
            this.asking = new Asking(catalogue, asked.withHand(asked.hand().pinning(pinned)));
        }

        Composed compose() {
            Holding.Held middle = new Holding(this::middle).hold(rules(asking.middle()));
            if (middle.answer() == null) {
                return new Composed.Refused(middle.refused());
            }
            List<Assembly.Chosen> chosen =
                    middle.assembly().chosen(middle.answer().items());
            Context context = Context.after(
                    wish, chosen.stream().map(Assembly.Chosen::option).toList());
            int gone = seconds(middle);
            Holding.Held ends =
                    new Holding(rules -> ends(rules, context, chosen, gone)).hold(rules(asking.ends(context)));
            return ends.answer() == null
                    ? new Composed.Refused(ends.refused())
                    : new Telling(pool(Set.of()), wish).made(unfit, middle, ends);
        }

        private List<Rule> rules(List<Rule.Asked> asked) {
            List<Rule> rules = new ArrayList<>();
            suiting.limitations().forEach(whose -> rules.add(new Rule.Limited(whose)));
            wish.hand().banned().stream()
                    .sorted()
                    .forEach(id -> rules.add(new Rule.Banned(
                            id, catalogue.movement(id).orElseThrow().name())));
            rules.add(new Rule.WithinMinutes(wish.minutes()));
            rules.addAll(asked);
            rules.add(new Rule.WholeShape());
            rules.add(new Rule.Filled(wish.minutes()));
            return rules;
        }

        private Assembly middle(List<Rule> rules) {
            Pool pool = pool(lifted(rules));
            List<Option> options = options(pool, rules, Set.of());
            Plan plan = new Plan(wish.minutes(), new Typical(options));
            Window window = plan.middleWindow();
            return attempt(
                    rules, Context.before(wish), shaped(plan.middle(), rules), options, window.least(), window.most());
        }

        private Assembly ends(List<Rule> rules, Context context, List<Assembly.Chosen> taken, int gone) {
            Pool pool = pool(lifted(rules));
            Set<String> used = new HashSet<>();
            taken.forEach(each -> used.add(each.option().movement().id()));
            int most = wish.seconds() - gone;
            int least = (int) Math.ceil(FILLED * wish.seconds()) - gone;
            List<Option> options = options(pool, rules, used);
            List<Place> places = new Plan(wish.minutes(), new Typical(options)).ends(new Window(least, most));
            return attempt(rules, context, shaped(places, rules), options, Math.max(0, least), most);
        }

        private static List<Place> shaped(List<Place> places, List<Rule> rules) {
            boolean whole = rules.stream().anyMatch(rule -> rule instanceof Rule.WholeShape);
            return whole
                    ? places
                    : places.stream().filter(Place::inLean).map(Place::lean).toList();
        }

        private Assembly attempt(
                List<Rule> rules, Context context, List<Place> places, List<Option> options, int least, int most) {
            boolean within = rules.stream().anyMatch(rule -> rule instanceof Rule.WithinMinutes);
            boolean filled = rules.stream().anyMatch(rule -> rule instanceof Rule.Filled);
            List<Rule.Asked> asked = rules.stream()
                    .filter(rule -> rule instanceof Rule.Asked)
                    .map(rule -> (Rule.Asked) rule)
                    .toList();
            return new Assembly(
                    context,
                    places,
                    options,
                    asked,
                    new Window(filled ? least : 0, within ? most : WITHOUT_END),
                    suiting.without(lifted(rules)).endurance());
        }

        /** The limitations that are looked away from to find out what stands in the way. */
        private Set<String> lifted(List<Rule> rules) {
            Set<String> lifted = new HashSet<>(suiting.limitations());
            rules.forEach(rule -> {
                if (rule instanceof Rule.Limited limited) {
                    lifted.remove(limited.whose());
                }
            });
            return lifted;
        }

        private Pool pool(Set<String> lifted) {
            return pools.computeIfAbsent(
                    lifted, each -> new Pool(catalogue, wish, each.isEmpty() ? suiting : suiting.without(each)));
        }

        private static List<Option> options(Pool pool, List<Rule> rules, Set<String> used) {
            Set<String> out = new HashSet<>(used);
            rules.forEach(rule -> {
                if (rule instanceof Rule.Banned banned) {
                    out.add(banned.movement());
                }
            });
            return pool.options().stream()
                    .filter(option -> !out.contains(option.movement().id()))
                    .toList();
        }

        private int seconds(Holding.Held held) {
            return held.assembly().problem().seconds(held.answer().items());
        }
    }
}
