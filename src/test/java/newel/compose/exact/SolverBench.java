package newel.compose.exact;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.runner.IterationType;

/**
 * Ours and both general solvers on the same problems, one problem an iteration: slots by candidates. The general solvers
 * stop after a time; what they left open counts as that time.
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 15)
@Measurement(iterations = 12)
@Fork(1)
public class SolverBench {
    private static final double CP_SAT_SECONDS = 4;
    private static final long OJ_ALGO_MILLIS = 1_500;

    /** How many problems were solved, and of how many it was proved that nothing is better or that nothing is possible. */
    @AuxCounters(AuxCounters.Type.EVENTS)
    @State(Scope.Thread)
    public static class Count {
        public int asked;
        public int proved;
    }

    /** Every other problem limits standing; demands are loose, middling and tight in turn. */
    @State(Scope.Benchmark)
    public abstract static class Problems {
        private static final long WARMING = 1_000_000;

        private long next;
        Problem problem;

        abstract String size();

        @Setup
        public void judges() {
            if (!CpSatJudge.here()) {
                throw new IllegalStateException("no native library of CP-SAT for this system");
            }
        }

        /** All solvers are measured on the same problems; those for warming up are others. */
        @Setup(Level.Iteration)
        public void next(IterationParams iteration) {
            long seed = iteration.getType() == IterationType.WARMUP ? WARMING + next++ : next++;
            next = iteration.getType() == IterationType.WARMUP && iteration.getCount() == next ? 0 : next;
            int by = size().indexOf('x');
            int slots = Integer.parseInt(size().substring(0, by));
            int candidates = Integer.parseInt(size().substring(by + 1));
            Instances.Size size = new Instances.Size(slots, candidates, 60, 7, 6, 100);
            problem = new Instances(7_000 + 100L * slots + 10L * candidates + seed)
                    .problem(size, (int) (seed % 2) * 180, (int) (seed % 3));
        }
    }

    public static class All extends Problems {
        @Param({"10x25", "10x50", "10x100", "14x25", "14x50", "14x100", "20x25", "20x50", "20x100"})
        public String size;

        @Override
        String size() {
            return size;
        }
    }

    /** ojAlgo looks at its time only between steps, which on larger problems take minutes. */
    public static class Small extends Problems {
        @Param({"10x25", "14x25"})
        public String size;

        @Override
        String size() {
            return size;
        }
    }

    @Benchmark
    public Verdict ours(All all, Count count) {
        return counted(Verdict.of(Solver.solve(all.problem, new Budget(Budget.LARGE))), count);
    }

    @Benchmark
    @Warmup(iterations = 0)
    public Verdict cpSat(All all, Count count) {
        return counted(CpSatJudge.score(all.problem, CP_SAT_SECONDS), count);
    }

    @Benchmark
    @Warmup(iterations = 0)
    public Verdict ojAlgo(Small small, Count count) {
        return counted(OjAlgoJudge.judge(small.problem, OJ_ALGO_MILLIS), count);
    }

    private static Verdict counted(Verdict verdict, Count count) {
        count.asked++;
        count.proved += verdict.decided() ? 1 : 0;
        return verdict;
    }
}
