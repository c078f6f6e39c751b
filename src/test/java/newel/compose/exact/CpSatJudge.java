package newel.compose.exact;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The same problem for CP-SAT, as a network: a literal for each candidate and each pair of neighbouring states. */
final class CpSatJudge {
    private final Problem problem;
    private final CpModel model = new CpModel();
    private final List<List<BoolVar>> chosen = new ArrayList<>();
    private final LinearExprBuilder value = LinearExpr.newBuilder();
    private final LinearExprBuilder seconds = LinearExpr.newBuilder();

    /** Values of a point, so that ties are decided too, or 1, which leaves them to it. */
    private final boolean ties;

    private CpSatJudge(Problem problem, boolean ties) {
        this.problem = problem;
        this.ties = ties;
    }

    static boolean here() {
        try {
            Loader.loadNativeLibraries();
            return true;
        } catch (RuntimeException | LinkageError e) {
            return false;
        }
    }

    /** Decides ties as ours does. */
    static Verdict judge(Problem problem, double limitSeconds) {
        return new CpSatJudge(problem, true).judged(limitSeconds);
    }

    /** An easier question: the best score, whichever items have it. */
    static Verdict score(Problem problem, double limitSeconds) {
        return new CpSatJudge(problem, false).judged(limitSeconds);
    }

    private Verdict judged(double limitSeconds) {
        slots();
        neighbours();
        families();
        demands();
        runs(true);
        runs(false);
        model.addLinearConstraint(
                seconds, problem.window().least(), problem.window().most());
        model.maximize(value);
        return solved(limitSeconds);
    }

    private Verdict solved(double limitSeconds) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumSearchWorkers(1).setRandomSeed(1).setMaxTimeInSeconds(limitSeconds);
        CpSolverStatus status = solver.solve(model);
        if (status == CpSolverStatus.INFEASIBLE) {
            return Verdict.IMPOSSIBLE;
        }
        if (status != CpSolverStatus.OPTIMAL) {
            return Verdict.OPEN;
        }
        List<String> ids = new ArrayList<>();
        for (int s = 0; s < chosen.size(); s++) {
            List<Candidate> candidates = problem.slots().get(s).candidates();
            for (int c = 0; c < candidates.size(); c++) {
                if (solver.booleanValue(chosen.get(s).get(c))) {
                    ids.add(candidates.get(c).id());
                }
            }
        }
        long best = Math.round(solver.objectiveValue());
        return new Verdict(true, ties ? Ties.points(best) : (int) best, ids);
    }

    private void slots() {
        int slots = problem.slots().size();
        for (int s = 0; s < slots; s++) {
            List<BoolVar> these = new ArrayList<>();
            for (Candidate c : problem.slots().get(s).candidates()) {
                BoolVar x = model.newBoolVar(c.id());
                these.add(x);
                value.addTerm(x, ties ? Ties.value(c.points(), s, c.id(), slots) : c.points());
                seconds.addTerm(x, c.seconds());
            }
            model.addExactlyOne(these.toArray(Literal[]::new));
            chosen.add(these);
        }
    }

    private Map<Integer, LinearExprBuilder> byState(int s) {
        Map<Integer, LinearExprBuilder> sums = new HashMap<>();
        for (int c = 0; c < chosen.get(s).size(); c++) {
            int state = problem.slots().get(s).candidates().get(c).state();
            sums.computeIfAbsent(state, each -> LinearExpr.newBuilder())
                    .add(chosen.get(s).get(c));
        }
        return sums;
    }

    private void neighbours() {
        for (int s = 1; s < chosen.size(); s++) {
            Map<Integer, LinearExprBuilder> from = byState(s - 1);
            Map<Integer, LinearExprBuilder> to = byState(s);
            Map<Integer, LinearExprBuilder> into = new HashMap<>();
            for (int p : from.keySet()) {
                LinearExprBuilder out = LinearExpr.newBuilder();
                for (int q : to.keySet()) {
                    int penalty = problem.transitions().penalty(s, p, q);
                    if (penalty < Transitions.FORBIDDEN) {
                        BoolVar y = model.newBoolVar("");
                        out.add(y);
                        into.computeIfAbsent(q, each -> LinearExpr.newBuilder()).add(y);
                        value.addTerm(y, ties ? -penalty * Ties.POINT : -penalty);
                        seconds.addTerm(y, problem.transitions().seconds(s, p, q));
                    }
                }
                model.addEquality(out, from.get(p));
            }
            to.forEach((q, sum) -> model.addEquality(into.getOrDefault(q, LinearExpr.newBuilder()), sum));
        }
    }

    private void families() {
        Map<String, List<Literal>> families = new HashMap<>();
        each((s, c, x) -> {
            if (!c.family().isEmpty()) {
                families.computeIfAbsent(c.family(), f -> new ArrayList<>()).add(x);
            }
        });
        families.values().forEach(model::addAtMostOne);
    }

    private void demands() {
        for (int d = 0; d < problem.demands().size(); d++) {
            int demand = d;
            LinearExprBuilder served = LinearExpr.newBuilder();
            each((s, c, x) -> {
                if ((c.serves() >> demand & 1) == 1) {
                    served.add(x);
                }
            });
            model.addGreaterOrEqual(served, problem.demands().get(d).least());
        }
    }

    /** A run's length so far in each slot; who goes on adds to it. */
    private void runs(boolean standing) {
        int most =
                standing ? problem.endurance().standing() : problem.endurance().armsUp();
        IntVar before = null;
        for (int s = 0; s < chosen.size(); s++) {
            IntVar run = model.newIntVar(0, most, "");
            List<Candidate> candidates = problem.slots().get(s).candidates();
            for (int c = 0; c < candidates.size(); c++) {
                int own = standing
                        ? candidates.get(c).standing()
                        : candidates.get(c).armsUp();
                BoolVar x = chosen.get(s).get(c);
                if (own > 0) {
                    model.addGreaterOrEqual(run, own).onlyEnforceIf(x);
                    int pause = standing ? problem.slots().get(s).pause() : 0;
                    if (s > 0 && !problem.slots().get(s).fresh()) {
                        goesOn(run, before, own + pause, x, s, standing);
                    }
                }
            }
            before = run;
        }
    }

    private void goesOn(IntVar run, IntVar before, int more, BoolVar x, int s, boolean standing) {
        for (int c = 0; c < chosen.get(s - 1).size(); c++) {
            Candidate other = problem.slots().get(s - 1).candidates().get(c);
            if ((standing ? other.standing() : other.armsUp()) > 0) {
                LinearExprBuilder sum = LinearExpr.newBuilder().add(before).add(more);
                model.addGreaterOrEqual(run, sum)
                        .onlyEnforceIf(new Literal[] {x, chosen.get(s - 1).get(c)});
            }
        }
    }

    private interface Each {
        void of(int slot, Candidate candidate, BoolVar x);
    }

    private void each(Each each) {
        for (int s = 0; s < chosen.size(); s++) {
            for (int c = 0; c < chosen.get(s).size(); c++) {
                each.of(
                        s,
                        problem.slots().get(s).candidates().get(c),
                        chosen.get(s).get(c));
            }
        }
    }
}
