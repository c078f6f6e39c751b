package newel.compose.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Two general solvers judge the same problems. */
class JudgesTest {
    private static final long SEED = 20261127;

    @Test
    void cp_sat_finds_the_same_items() {
        assertTrue(CpSatJudge.here(), "CP-SAT has no native library for this system, so that it judges nothing");
        int decided = 0;
        for (int i = 0; i < 40; i++) {
            Problem problem = problem(i);
            Verdict verdict = CpSatJudge.judge(problem, 2);
            if (verdict.decided()) {
                decided++;
                assertEquals(verdict, ours(problem), "seed " + (SEED + i));
            }
        }
        assertTrue(decided > 30, decided + " decided");
    }

    @Test
    void oj_algo_finds_the_same_score() {
        int decided = 0;
        for (int i = 0; i < 25; i++) {
            Problem problem = problem(i);
            Verdict verdict = OjAlgoJudge.judge(problem, 500);
            if (verdict.decided()) {
                decided++;
                Verdict ours = ours(problem);
                String which = "seed " + (SEED + i);
                assertEquals(verdict.ids().isEmpty(), ours.ids().isEmpty(), which);
                assertEquals(verdict.score(), ours.score(), which);
            }
        }
        assertTrue(decided > 15, decided + " decided");
    }

    private static Problem problem(int i) {
        Instances.Size size = new Instances.Size(4 + i % 3, 4 + i % 5, 4 + i % 9, i % 5, 2, 20);
        return new Instances(SEED + i).problem(size, i % 3 == 0 ? 120 : 0, i % 3);
    }

    private static Verdict ours(Problem problem) {
        return Verdict.of(Solver.solve(problem, new Budget(Budget.LARGE)));
    }
}
