package newel.compose.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SolverTest {
    private static final long SEED = 20261126;
    private static final int INSTANCES = 3000;
    private static final int[][] WIDTHS = {{256, 1000}, {2, 3, 30, 1_000_000}, {1, 2, 3, 4, 1_000_000}};

    @Test
    void small_problems_come_out_as_when_every_sequence_is_tried() {
        int feasible = 0;
        for (int i = 0; i < INSTANCES; i++) {
            Problem problem = new Instances(SEED + i).small();
            Optional<Enumeration.Best> best = Enumeration.of(problem);
            Answer answer = solve(problem, i);
            Answer possible = Feasibility.find(problem, new Budget(Budget.LARGE), new int[] {2, 3, 30, 1_000_000});

            String which = "seed " + (SEED + i);
            if (best.isEmpty()) {
                assertEquals(new Answer.Impossible(), answer, which);
                assertEquals(new Answer.Impossible(), possible, which);
            } else {
                feasible++;
                int score = best.get().score();
                assertEquals(new Answer.Found(best.get().items(), score, score), answer, which);
                assertEquals(List.of(), Rules.broken(problem, best.get().items()), which);
                assertEquals(List.of(), Rules.broken(problem, ((Answer.Found) possible).items()), which);
            }
        }
        assertTrue(feasible > INSTANCES / 4 && feasible < 3 * INSTANCES / 4, feasible + " have a solution");
    }

    private static Answer solve(Problem problem, int i) {
        int[] widths = WIDTHS[i % WIDTHS.length];
        int[] later = java.util.Arrays.copyOfRange(widths, 1, widths.length);
        return Solver.solve(problem, new Budget(Budget.LARGE), widths[0], later);
    }

    @Test
    void shuffled_candidates_give_the_same_items() {
        for (int i = 0; i < 16; i++) {
            Instances instances = new Instances(SEED + i);
            Problem problem = instances.problem(new Instances.Size(10, 25, 40, 5, 5, 30), i % 2 * 150, 1);
            Answer one = Solver.solve(problem, new Budget(Budget.LARGE));
            Answer other = Solver.solve(instances.shuffled(problem), new Budget(Budget.LARGE));

            assertEquals(one, other, "seed " + (SEED + i));
        }
    }

    @Test
    void a_small_budget_gives_an_honest_bound() {
        int open = 0;
        for (int i = 0; i < 24; i++) {
            Problem problem = new Instances(SEED + i).problem(new Instances.Size(12, 40, 50, 5, 5, 40), i % 2 * 150, 1);
            Answer best = Solver.solve(problem, new Budget(Budget.LARGE));
            Answer early = Solver.solve(problem, new Budget(30_000));

            String which = "seed " + (SEED + i);
            if (best instanceof Answer.Found found && early instanceof Answer.Found first) {
                assertTrue(found.optimal(), which);
                assertTrue(first.score() <= found.score() && found.score() <= first.bound(), which + " " + first);
                assertEquals(List.of(), Rules.broken(problem, first.items()), which);
                assertEquals(Rules.score(problem, first.items()), first.score(), which);
                open += first.optimal() ? 0 : 1;
            }
        }
        assertTrue(open > 0, "some are cut short");
    }
}
