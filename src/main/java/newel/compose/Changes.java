package newel.compose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import newel.compose.exact.Transitions;

/**
 * States of a part's items and what lies between them. One more state, END, is an empty place after a part's last item.
 */
final class Changes implements Transitions {
    static final int END = 0;

    private final List<Place> places;
    private final List<Standing> standings = new ArrayList<>();
    private final Map<Standing, Integer> states = new HashMap<>();

    /** @param rank of the item within its part; in parts with ranks they rise */
    private record Standing(Stance stance, int rank) {}

    Changes(List<Place> places) {
        this.places = places;
        standings.add(null);
    }

    int state(Stance stance, int rank) {
        return states.computeIfAbsent(new Standing(stance, rank), each -> {
            standings.add(each);
            return standings.size() - 1;
        });
    }

    @Override
    public int penalty(int slot, int from, int to) {
        Place place = places.get(slot);
        if (!allowed(place, from, to)) {
            return FORBIDDEN;
        }
        if (from == END || to == END || place.first()) {
            return 0;
        }
        Standing before = standings.get(from);
        Standing after = standings.get(to);
        boolean falls = before.rank() != Ranks.NONE && after.rank() <= before.rank() && !place.last();
        return falls ? FORBIDDEN : before.stance().penalty(after.stance(), place.kind() == BlockKind.ROUND);
    }

    private static boolean allowed(Place place, int from, int to) {
        if (to == END) {
            return place.optional();
        }
        return place.first() || from != END || place.last();
    }

    @Override
    public int seconds(int slot, int from, int to) {
        Place place = places.get(slot);
        if (from == END || to == END || place.first()) {
            return 0;
        }
        return place.passes()
                * Timing.pause(standings.get(from).stance(), standings.get(to).stance(), place.rest());
    }
}
