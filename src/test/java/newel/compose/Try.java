package newel.compose;

import java.util.*;
import newel.*;
import newel.client.*;
import newel.program.*;

public class Try {
    public static void main(String[] a) {
        Timing t = new Timing(Shipped.CATALOGUE);
        Composer c = new Composer(Shipped.CATALOGUE);
        var mx = java.lang.management.ManagementFactory.getThreadMXBean();
        int reps = a.length > 1 ? Integer.parseInt(a[1]) : 1;
        for (int rep = 0; rep < reps; rep++)
            for (Client p : People.all()) {
                Wish w = newel.program.Drafting.wish(p).withMinutes(Integer.parseInt(a[0]));
                Suiting s = Shipped.suiting(p);
                long t0 = mx.getCurrentThreadCpuTime();
                Composed r = c.compose(w, s);
                long us = (mx.getCurrentThreadCpuTime() - t0) / 1000;
                if (rep < reps - 1) continue;
                System.out.println("== " + p.profile().name() + " " + us / 1000.0 + " ms cpu");
                if (r instanceof Composed.Made m) {
                    System.out.println(m.proof() + " " + t.session(m.session()) / 60.0);
                    for (Block b : m.session().blocks()) {
                        System.out.println(
                                "  " + b.kind() + " x" + b.passes() + " rest " + b.restSeconds() + " : " + t.block(b));
                        for (Item i : b.items()) {
                            Why y = m.why().stream()
                                    .filter(q -> q.movement().equals(i.movement()))
                                    .findFirst()
                                    .get();
                            System.out.println("     " + t.clock(m.session()).get(i.movement()) + " " + i.variant()
                                    + " " + i.dose().sets() + "/" + i.dose().repetitions() + "/"
                                    + i.dose().seconds() + " " + i.how() + " "
                                    + y.lines().stream()
                                            .map(l -> l.points() + " " + l.title())
                                            .toList() + " | " + y.runnerUp() + " " + y.behind());
                        }
                    }
                    System.out.println("  givenUp " + m.givenUp() + "\n  left "
                            + m.leftOut().stream().map(LeftOut::movement).toList());
                } else System.out.println(r);
            }
    }
}
