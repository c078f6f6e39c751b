package newel.compose.exact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** The same problem as a mixed-integer program for ojAlgo, as a network of states. Ties are left to it. */
final class OjAlgoJudge {
    private final Problem problem;
    private final ExpressionsBasedModel model = new ExpressionsBasedModel();
    private final List<List<Variable>> chosen = new ArrayList<>();
    private final Expression seconds = model.newExpression("seconds");

    private OjAlgoJudge(Problem problem) {
        this.problem = problem;
    }

    static Verdict judge(Problem problem, long limitMillis) {
        OjAlgoJudge judge = new OjAlgoJudge(problem);
        judge.slots();
        judge.neighbours();
        judge.families();
        judge.demands();
        judge.runs(true);
        judge.runs(false);
        judge.seconds.lower(problem.window().least()).upper(problem.window().most());
        judge.model.options.time_abort = limitMillis;
        judge.model.options.time_suffice = limitMillis;
        return judge.solved();
    }

    private Verdict solved() {
        Optimisation.Result result = model.maximise();
        if (result.getState() == Optimisation.State.INFEASIBLE) {
            return Verdict.IMPOSSIBLE;
        }
        if (!result.getState().isOptimal()) {
            return Verdict.OPEN;
        }
        List<String> ids = new ArrayList<>();
        chosen.forEach(slot ->
                slot.stream().filter(x -> x.getValue().doubleValue() > 0.5).forEach(x -> ids.add(x.getName())));
        return new Verdict(true, (int) Math.round(result.getValue()), ids);
    }

    private Variable binary(String name, double weight) {
        return model.newVariable(name).binary().weight(weight);
    }

    private void slots() {
        for (int s = 0; s < problem.slots().size(); s++) {
            Expression one = model.newExpression("slot " + s).level(1);
            List<Variable> these = new ArrayList<>();
            for (Candidate c : problem.slots().get(s).candidates()) {
                Variable x = binary(c.id(), c.points());
                these.add(x);
                one.set(x, 1);
                seconds.set(x, c.seconds());
            }
            chosen.add(these);
        }
    }

    private void neighbours() {
        for (int s = 1; s < chosen.size(); s++) {
            Map<Integer, Expression> out = byState(s - 1, "out " + s);
            Map<Integer, Expression> into = byState(s, "in " + s);
            for (int p : out.keySet()) {
                for (int q : into.keySet()) {
                    int penalty = problem.transitions().penalty(s, p, q);
                    if (penalty < Transitions.FORBIDDEN) {
                        Variable y = model.newVariable("y%d %d %d".formatted(s, p, q))
                                .lower(0)
                                .upper(1)
                                .weight(-penalty);
                        out.get(p).set(y, -1);
                        into.get(q).set(y, -1);
                        seconds.set(y, problem.transitions().seconds(s, p, q));
                    }
                }
            }
        }
    }

    private Map<Integer, Expression> byState(int s, String name) {
        Map<Integer, Expression> sums = new HashMap<>();
        for (int c = 0; c < chosen.get(s).size(); c++) {
            int state = problem.slots().get(s).candidates().get(c).state();
            sums.computeIfAbsent(
                            state,
                            each -> model.newExpression(name + " " + each).level(0))
                    .set(chosen.get(s).get(c), 1);
        }
        return sums;
    }

    private void families() {
        Map<String, Expression> families = new HashMap<>();
        each((s, c, x) -> {
            if (!c.family().isEmpty()) {
                families.computeIfAbsent(
                                c.family(),
                                f -> model.newExpression("family " + f).upper(1))
                        .set(x, 1);
            }
        });
    }

    private void demands() {
        for (int d = 0; d < problem.demands().size(); d++) {
            int demand = d;
            Expression served = model.newExpression("demand " + d)
                    .lower(problem.demands().get(d).least());
            each((s, c, x) -> {
                if ((c.serves() >> demand & 1) == 1) {
                    served.set(x, 1);
                }
            });
        }
    }

    /** run(s) ≥ own(s), and run(s) ≥ run(s−1) + own(s) + pause − M·(2 − stands(s) − stands(s−1)). */
    private void runs(boolean standing) {
        int most =
                standing ? problem.endurance().standing() : problem.endurance().armsUp();
        if (most >= Problem.Endurance.WITHOUT_LIMIT.standing()) {
            return;
        }
        Variable before = null;
        for (int s = 0; s < chosen.size(); s++) {
            Variable run = model.newVariable((standing ? "standing " : "arms ") + s)
                    .lower(0)
                    .upper(most);
            Expression own = model.newExpression("own " + standing + s).lower(0).set(run, 1);
            int pause = standing ? problem.slots().get(s).pause() : 0;
            boolean goesOn = s > 0 && !problem.slots().get(s).fresh();
            int big = 2 * most + 1000;
            Expression on = goesOn
                    ? model.newExpression("on " + standing + s)
                            .lower(pause - 2.0 * big)
                            .set(run, 1)
                            .set(before, -1)
                    : null;
            for (int c = 0; c < chosen.get(s).size(); c++) {
                int length = length(s, c, standing);
                if (length > 0) {
                    own.set(chosen.get(s).get(c), -length);
                    if (goesOn) {
                        on.set(chosen.get(s).get(c), -length - big);
                    }
                }
            }
            if (goesOn) {
                for (int c = 0; c < chosen.get(s - 1).size(); c++) {
                    if (length(s - 1, c, standing) > 0) {
                        on.set(chosen.get(s - 1).get(c), -big);
                    }
                }
            }
            before = run;
        }
    }

    private int length(int s, int c, boolean standing) {
        Candidate candidate = problem.slots().get(s).candidates().get(c);
        return standing ? candidate.standing() : candidate.armsUp();
    }

    private interface Each {
        void of(int slot, Candidate candidate, Variable x);
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
