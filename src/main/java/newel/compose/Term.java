package newel.compose;

import java.util.EnumMap;
import java.util.Map;
import newel.catalogue.Kind;
import newel.catalogue.Purpose;

/** One reason for an option to stand in a place, as a share or a number of its weight. */
enum Term {
    GOALS(Weight.GOALS, "Serves the goals", (context, place, option) -> option.serves()),
    CHALLENGE(Weight.CHALLENGE, "Near the right challenge", (context, place, option) -> Math.max(0, 1 - option.loss())),
    MAJOR(Weight.MAJOR, "Works large muscle groups", (context, place, option) -> middle(place) ? groups(option) : 0),
    RETURNS(Weight.RETURNS, "Known from last time", (context, place, option) -> times(context, option) > 0 ? 1 : 0),
    SAME_PLACE(Weight.SAME_PLACE, "Where it was last time", (context, place, option) -> same(context, place, option)),
    LONG_ENOUGH(
            Weight.LONG_ENOUGH,
            "Came back many times",
            (context, place, option) -> times(context, option) >= Term.MANY_TIMES ? 1 : 0),
    MORE(Weight.MORE, "More of this was asked for", (context, place, option) -> wanted(context, option)),
    EARLY(
            Weight.EARLY,
            "What matters most comes early",
            (context, place, option) -> place.roundsAfter() * 2 * option.serves()),
    LOOSENS(
            Weight.LOOSENS,
            "Loosens what the rounds will load",
            (context, place, option) -> loosened(context, place, option)),
    WARMS(
            Weight.WARMS,
            "Brings the pulse up",
            (context, place, option) -> place.kind() == BlockKind.WARM_UP && option.kind() == Kind.PULSE ? 1 : 0),
    STRETCHES(
            Weight.STRETCHES,
            "Stretches what was worked",
            (context, place, option) -> stretched(context, place, option));

    /** Four weeks of three days (design choice). */
    static final int MANY_TIMES = 12;

    private interface Measure {
        double of(Context context, Place place, Option option);
    }

    private final Weight weight;
    private final String title;
    private final Measure measure;

    Term(Weight weight, String title, Measure measure) {
        this.weight = weight;
        this.title = title;
        this.measure = measure;
    }

    String title() {
        return title;
    }

    int points(Context context, Place place, Option option) {
        return (int) Math.round(weight.points() * measure.of(context, place, option));
    }

    static int sum(Context context, Place place, Option option) {
        int sum = 0;
        for (Term term : values()) {
            sum += term.points(context, place, option);
        }
        return sum;
    }

    /** Every term that counts for something. */
    static Map<Term, Integer> all(Context context, Place place, Option option) {
        Map<Term, Integer> points = new EnumMap<>(Term.class);
        for (Term term : values()) {
            int worth = term.points(context, place, option);
            if (worth != 0) {
                points.put(term, worth);
            }
        }
        return points;
    }

    private static boolean middle(Place place) {
        return place.kind() == BlockKind.ROUND || place.kind() == BlockKind.BALANCE;
    }

    private static int groups(Option option) {
        int groups = 0;
        for (Purpose purpose : Purpose.values()) {
            groups += purpose.muscleGroup() && option.purposes().weight(purpose) >= Option.WORKED ? 1 : 0;
        }
        return groups;
    }

    private static int times(Context context, Option option) {
        return context.wish().recent().getOrDefault(option.movement().id(), 0);
    }

    private static int same(Context context, Place place, Option option) {
        String before = context.wish().places().get(option.movement().id());
        return place.name().equals(before) ? 1 : 0;
    }

    private static int wanted(Context context, Option option) {
        return context.wish().hand().moreOf().stream()
                        .anyMatch(purpose -> option.purposes().weight(purpose) >= Option.WORKED)
                ? 1
                : 0;
    }

    private static long loosened(Context context, Place place, Option option) {
        return place.kind() == BlockKind.WARM_UP
                ? option.mobility().stream().filter(context.loaded()::contains).count()
                : 0;
    }

    private static long stretched(Context context, Place place, Option option) {
        return place.kind() == BlockKind.COOL_DOWN && option.kind() == Kind.STRETCH
                ? context.mostWorked().stream()
                        .filter(group -> option.purposes().weight(group) >= 1)
                        .count()
                : 0;
    }
}
