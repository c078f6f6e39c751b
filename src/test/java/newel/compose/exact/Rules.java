package newel.compose.exact;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Judges a sequence anew from the problem alone; shares no code with the search. */
final class Rules {
    static List<String> broken(Problem p, List<Candidate> items) {
        List<String> broken = new ArrayList<>();
        if (items.size() != p.slots().size()) {
            return List.of("one a slot");
        }
        Set<String> families = new HashSet<>();
        int seconds = 0;
        for (int s = 0; s < items.size(); s++) {
            Candidate c = items.get(s);
            if (!p.slots().get(s).candidates().contains(c)) {
                broken.add(c.id() + " is not in slot " + s);
            }
            if (!c.family().isEmpty() && !families.add(c.family())) {
                broken.add(c.family() + " twice");
            }
            seconds += c.seconds();
            if (s > 0) {
                seconds += p.transitions().seconds(s, items.get(s - 1).state(), c.state());
                if (p.transitions().penalty(s, items.get(s - 1).state(), c.state()) >= Transitions.FORBIDDEN) {
                    broken.add("forbidden neighbours at " + s);
                }
            }
        }
        if (seconds < p.window().least() || seconds > p.window().most()) {
            broken.add(seconds + " s");
        }
        for (int d = 0; d < p.demands().size(); d++) {
            int demand = d;
            long served =
                    items.stream().filter(c -> (c.serves() >> demand & 1) == 1).count();
            if (served < p.demands().get(d).least()) {
                broken.add(p.demands().get(d).name() + " served " + served + " times");
            }
        }
        broken.addAll(runs(p, items));
        return broken;
    }

    private static List<String> runs(Problem p, List<Candidate> items) {
        List<String> broken = new ArrayList<>();
        for (int from = 0; from < items.size(); from++) {
            int standing = 0;
            int armsUp = 0;
            boolean stands = true;
            boolean reaches = true;
            for (int s = from;
                    s < items.size() && (s == from || !p.slots().get(s).fresh());
                    s++) {
                Candidate c = items.get(s);
                stands &= c.standing() > 0;
                reaches &= c.armsUp() > 0;
                standing += c.standing() + (s == from ? 0 : p.slots().get(s).pause());
                armsUp += c.armsUp();
                if (stands && standing > p.endurance().standing()) {
                    broken.add("stands " + standing + " s from slot " + from);
                }
                if (reaches && armsUp > p.endurance().armsUp()) {
                    broken.add("arms up " + armsUp + " s from slot " + from);
                }
            }
        }
        return broken;
    }

    static int score(Problem p, List<Candidate> items) {
        int score = 0;
        for (int s = 0; s < items.size(); s++) {
            score += items.get(s).points();
            score -= s == 0
                    ? 0
                    : p.transitions()
                            .penalty(s, items.get(s - 1).state(), items.get(s).state());
        }
        return score;
    }

    private Rules() {}
}
