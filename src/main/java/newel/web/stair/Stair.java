package newel.web.stair;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import newel.catalogue.FlightPlan;
import newel.catalogue.Movement;

/** A movement's whole stair, from the easiest step. */
public record Stair(int levels, int columns, List<Placed> steps) {
    private static final int USUAL_COLUMNS = 7;
    private static final int USUAL_LEVELS = 4;

    /**
     * @param number counted from the easiest, so that a link can name a step
     * @param row from the top, 1 the highest
     * @param column from the left, 1 the first
     */
    public record Placed(Step step, int number, int row, int column, List<Down> down) {}

    /**
     * A link to an easier step.
     *
     * @param columns how far the easier step is to the left; below 0 to the right
     * @param levels how far it is down
     * @param lane of the lines under one row that lead to different steps, which one, from 0
     */
    public record Down(int number, String variant, String name, String words, int columns, int levels, int lane) {}

    public static Stair of(Movement movement, Function<FlightPlan.Place, Step> step) {
        FlightPlan plan = FlightPlan.of(movement);
        Map<FlightPlan.Place, Integer> numbers = new HashMap<>();
        plan.places().forEach(place -> numbers.put(place, numbers.size() + 1));
        List<Placed> steps = plan.places().stream()
                .map(place -> new Placed(
                        step.apply(place),
                        numbers.get(place),
                        plan.levels() - place.level(),
                        place.column() + 1,
                        down(plan, place, numbers)))
                .toList();
        return new Stair(plan.levels(), plan.columns(), steps);
    }

    private static List<Down> down(FlightPlan plan, FlightPlan.Place place, Map<FlightPlan.Place, Integer> numbers) {
        return plan.edges().stream()
                .filter(edge -> edge.harder().equals(place))
                .map(edge -> new Down(
                        numbers.get(edge.easier()),
                        edge.easier().variant().id(),
                        edge.easier().variant().name(),
                        LinkWords.down(edge.link().axis()),
                        place.column() - edge.easier().column(),
                        place.level() - edge.easier().level(),
                        lane(plan, edge)))
                .toList();
    }

    /** Links of one row to the same easier step share a lane. */
    private static int lane(FlightPlan plan, FlightPlan.Edge edge) {
        return plan.edges().stream()
                .filter(other -> other.harder().level() == edge.harder().level())
                .map(FlightPlan.Edge::easier)
                .distinct()
                .sorted(Comparator.comparingInt(FlightPlan.Place::column))
                .toList()
                .indexOf(edge.easier());
    }

    /** More columns than the page's usual width holds readably. */
    public boolean wide() {
        return columns > USUAL_COLUMNS;
    }

    /** So many levels that the top of the stair leaves room at its left. */
    public boolean tall() {
        return levels > USUAL_LEVELS;
    }

    /** Steps that are out or drawn back, which have reasons. */
    public List<Placed> reasoned() {
        return steps.stream()
                .filter(placed -> !placed.step().reasons().isEmpty())
                .toList();
    }
}
