package newel.compose.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Ours and both general solvers on the same problems, in one run, one after the other: {@code JudgesTable 3} for three
 * problems of each size. Judges stop after a time; what they left open counts as that time.
 */
final class JudgesTable {
    private static final long SEED = 7_000;
    private static final double CP_SAT_SECONDS = 4;
    private static final long OJ_ALGO_MILLIS = 1_500;

    /** It looks at its time only between steps, which on larger problems take minutes. */
    private static final int OJ_ALGO_SIZE = 14 * 25;

    private record Timed(boolean decided, double millis) {}

    public static void main(String[] arguments) {
        if (!CpSatJudge.here()) {
            System.out.println("no native library of CP-SAT for this system");
            return;
        }
        int each = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 3;
        for (int warm = 0; warm < 30; warm++) {
            Solver.solve(problem(10, 25, warm), new Budget(Budget.LARGE));
        }
        System.out.println("slots x candidates: decided, median ms of ours | CP-SAT | ojAlgo | ratios");
        for (int slots : new int[] {10, 14, 20}) {
            for (int candidates : new int[] {25, 50, 100}) {
                row(slots, candidates, each);
            }
        }
    }

    private static void row(int slots, int candidates, int each) {
        List<Timed> ours = new ArrayList<>();
        List<Timed> cpSat = new ArrayList<>();
        List<Timed> ojAlgo = new ArrayList<>();
        for (int i = 0; i < each; i++) {
            Problem problem = problem(slots, candidates, i);
            Verdict[] ourVerdict = new Verdict[1];
            ours.add(timed(() -> ourVerdict[0] = Verdict.of(Solver.solve(problem, new Budget(Budget.LARGE)))));
            cpSat.add(timed(() -> agreeing(CpSatJudge.judge(problem, CP_SAT_SECONDS), ourVerdict[0])));
            if (slots * candidates <= OJ_ALGO_SIZE) {
                ojAlgo.add(timed(() -> agreeing(OjAlgoJudge.judge(problem, OJ_ALGO_MILLIS), ourVerdict[0])));
            }
        }
        System.out.printf(
                "%d x %d: %s | %s | %s | %.0f, %.0f%n",
                slots,
                candidates,
                told(ours),
                told(cpSat),
                told(ojAlgo),
                median(cpSat) / median(ours),
                median(ojAlgo) / median(ours));
    }

    private static Verdict agreeing(Verdict judge, Verdict ours) {
        if (judge.decided() && ours.decided() && judge.score() != ours.score()) {
            throw new IllegalStateException(judge + " against " + ours);
        }
        return judge;
    }

    private static Timed timed(Supplier<Verdict> solver) {
        long before = System.nanoTime();
        boolean decided = solver.get().decided();
        return new Timed(decided, (System.nanoTime() - before) / 1e6);
    }

    private static String told(List<Timed> all) {
        return "%d of %d, %.0f".formatted(all.stream().filter(Timed::decided).count(), all.size(), median(all));
    }

    private static double median(List<Timed> all) {
        return all.stream()
                .mapToDouble(Timed::millis)
                .sorted()
                .skip(all.size() / 2)
                .findFirst()
                .orElse(Double.NaN);
    }

    private static Problem problem(int slots, int candidates, int i) {
        Instances.Size size = new Instances.Size(slots, candidates, 60, 7, 6, 100);
        return new Instances(SEED + 100L * slots + candidates + i).problem(size, i % 2 * 180, 1);
    }

    private JudgesTable() {}
}
