package newel.assess;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import newel.assess.Plot.Tick;

/** The figures that a plot shows, from bottom to top, with round numbers beside it. */
record Heights(double from, double to, BigDecimal step) {
    private static final int MOST_TICKS = 6;
    private static final List<BigDecimal> STEPS = steps();

    private static List<BigDecimal> steps() {
        List<BigDecimal> steps = new ArrayList<>();
        for (int power = -2; power <= 3; power++) {
            for (int lead : new int[] {1, 2, 5}) {
                steps.add(BigDecimal.valueOf(lead).scaleByPowerOfTen(power));
            }
        }
        return List.copyOf(steps);
    }

    /**
     * Some room above and below, so that no figure lies on the edge.
     *
     * @param smallest the smallest step that means something
     */
    static Heights over(List<Double> figures, BigDecimal smallest) {
        double least = figures.stream().mapToDouble(each -> each).min().orElse(0);
        double most = figures.stream().mapToDouble(each -> each).max().orElse(1);
        BigDecimal step = STEPS.stream()
                .filter(each -> each.compareTo(smallest) >= 0)
                .filter(each -> (most - least) / each.doubleValue() <= MOST_TICKS - 2)
                .findFirst()
                .orElse(STEPS.getLast());
        double size = step.doubleValue();
        return new Heights(Math.floor(least / size - 0.4) * size, Math.ceil(most / size + 0.4) * size, step);
    }

    double of(double figure) {
        return Plot.BOTTOM - (figure - from) / (to - from) * (Plot.BOTTOM - Plot.TOP);
    }

    List<Tick> ticks() {
        List<Tick> ticks = new ArrayList<>();
        long first = Math.round(from / step.doubleValue());
        long last = Math.round(to / step.doubleValue());
        for (long i = first; i <= last; i++) {
            BigDecimal figure = step.multiply(BigDecimal.valueOf(i));
            ticks.add(new Tick(of(figure.doubleValue()), figure.toPlainString()));
        }
        return List.copyOf(ticks);
    }
}
