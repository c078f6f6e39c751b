package newel.compose;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import newel.People;
import newel.Shipped;
import newel.client.Client;
import newel.program.Beginning;
import newel.program.Drafting;

/** What comes out for many simulated clients. Times are of the processor, so that a busy machine counts less. */
final class SimulatedTable {
    /** The first clients warm the machine up and are not timed. */
    private static final int WARM = 100;

    private int whole;
    private int withLess;
    private int refused;
    private int proved;
    private final List<String> open = new ArrayList<>();
    private final List<String> broken = new ArrayList<>();
    private final List<Double> millis = new ArrayList<>();
    private final List<Double> millisOf25 = new ArrayList<>();
    private final List<Double> millisWithConflict = new ArrayList<>();
    private final Map<String, Integer> missed = new TreeMap<>();
    private final Map<String, Integer> refusals = new TreeMap<>();
    private final Map<String, Integer> leftOut = new TreeMap<>();

    void add(long seed, Client client, Composer composer) {
        Wish wish = Drafting.wish(client, Beginning.of(client, People.TODAY).levels());
        Suiting suiting = Shipped.suiting(client);
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Composed composed = composer.compose(wish, suiting);
        double taken = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / 1e6;
        if (seed > WARM) {
            millis.add(taken);
            if (wish.minutes() == 25) {
                millisOf25.add(taken);
            }
            if (!(composed instanceof Composed.Made made && made.givenUp().isEmpty())) {
                millisWithConflict.add(taken);
            }
        }
        switch (composed) {
            case Composed.Made made -> made(seed, wish, suiting, made);
            case Composed.Refused no -> {
                refused++;
                refusals.merge(kinds(no.conflict()), 1, Integer::sum);
            }
        }
    }

    private void made(long seed, Wish wish, Suiting suiting, Composed.Made made) {
        if (made.givenUp().isEmpty()) {
            whole++;
        } else {
            withLess++;
        }
        proved += made.proof().optimal() ? 1 : 0;
        if (!made.proof().optimal()) {
            open.add("seed %d, %d minutes, %d of at most %d"
                    .formatted(
                            seed,
                            wish.minutes(),
                            made.proof().score(),
                            made.proof().bound()));
        }
        SessionRules.broken(wish, suiting, made).forEach(rule -> broken.add("seed " + seed + ": " + rule));
        made.givenUp().forEach(each -> missed.merge(each.wish() + " | " + kinds(each.conflict()), 1, Integer::sum));
        made.leftOut().forEach(each -> leftOut.merge(each.movement(), 1, Integer::sum));
    }

    /** Which limitations, without the day they were logged on. */
    private static String kinds(List<String> conflict) {
        return conflict.stream()
                .filter(line -> line.startsWith("(") || line.equals("at home") || line.endsWith("."))
                .map(line -> line.replaceAll(", logged.*", "").replace("(", ""))
                .sorted()
                .toList()
                .toString();
    }

    void print(PrintStream out) {
        out.printf(
                "composed %d, with something left out %d, refused %d, proved best %d%n",
                whole, withLess, refused, proved);
        out.printf(
                "broken rules %d %s%n", broken.size(), broken.stream().limit(10).toList());
        out.println("not proved: " + open);
        times(out, "all, ms", millis);
        times(out, "25 minutes, ms", millisOf25);
        times(out, "with a conflict named, ms", millisWithConflict);
        out.println("most often given up, and what stands against it:");
        most(out, missed);
        out.println("refused for:");
        most(out, refusals);
        out.println("movements of which nothing fits:");
        most(out, leftOut);
    }

    private static void times(PrintStream out, String name, List<Double> all) {
        List<Double> sorted = all.stream().sorted().toList();
        if (!sorted.isEmpty()) {
            out.printf(
                    "%s: median %.1f, p90 %.1f, p99 %.1f, most %.1f%n",
                    name, at(sorted, .5), at(sorted, .9), at(sorted, .99), sorted.getLast());
        }
    }

    private static double at(List<Double> sorted, double share) {
        return sorted.get((int) (share * (sorted.size() - 1)));
    }

    private static void most(PrintStream out, Map<String, Integer> counts) {
        counts.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder()))
                .limit(15)
                .forEach(entry -> out.printf("  %5d  %s%n", entry.getValue(), entry.getKey()));
    }
}
