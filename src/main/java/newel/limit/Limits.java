package newel.limit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * All that holds for one person: the limits of every limitation and of the home, without those that another one makes
 * needless. Of two that say the same, the clinician's is kept, then the one logged first.
 */
public record Limits(List<Bound> bounds) {
    public static final Limits NONE = new Limits(List.of());

    public Limits {
        bounds = List.copyOf(bounds);
    }

    public static Limits of(List<Limitation> limitations, List<Limit> home) {
        return of(limitations, home, List.of());
    }

    /** @param screening what the readiness and falls check asks of every variant */
    public static Limits of(List<Limitation> limitations, List<Limit> home, List<Limit> screening) {
        List<Bound> all = new ArrayList<>();
        limitations.stream()
                .sorted(Comparator.comparing(from -> from.source() != Limitation.Source.CLINICIAN))
                .forEach(from -> from.limits().forEach(limit -> all.add(Bound.of(limit, from))));
        screening.forEach(limit -> all.add(Bound.screening(limit)));
        home.forEach(limit -> all.add(Bound.home(limit)));
        return new Limits(tightest(all));
    }

    public static Limits of(List<Limitation> limitations) {
        return of(limitations, List.of());
    }

    public List<Limit> limits() {
        return bounds.stream().map(Bound::limit).toList();
    }

    private static List<Bound> tightest(List<Bound> all) {
        List<Bound> kept = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (!needless(all, i)) {
                kept.add(all.get(i));
            }
        }
        return kept;
    }

    private static boolean needless(List<Bound> all, int index) {
        Limit limit = all.get(index).limit();
        for (int i = 0; i < all.size(); i++) {
            Limit other = all.get(i).limit();
            boolean tighter = i != index && Tightness.implies(other, limit);
            if (tighter && (i < index || !Tightness.implies(limit, other))) {
                return true;
            }
        }
        return false;
    }
}
