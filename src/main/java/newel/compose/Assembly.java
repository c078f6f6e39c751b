package newel.compose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import newel.compose.exact.Candidate;
import newel.compose.exact.Demand;
import newel.compose.exact.Problem;
import newel.compose.exact.Slot;

/** Turns places, options and wishes into a problem of slots and candidates, and its solution back. */
final class Assembly {
    private static final String END = "~";
    /** With so many movements to choose from, no place stays empty for want of one. */
    private static final int ENOUGH = 4;

    private final Context context;
    private final List<Place> places;
    private final List<Option> options;
    private final List<Rule.Asked> asked;
    private final Changes changes;
    private final Ranks ranks;
    private final Problem.Window window;
    private final Endurance endurance;
    private final Map<String, Option> byId = new HashMap<>();
    private Problem problem;

    Assembly(
            Context context,
            List<Place> places,
            List<Option> options,
            List<Rule.Asked> asked,
            Problem.Window window,
            Endurance endurance) {
        this.context = context;
        this.places = places;
        this.options = options;
        this.asked = asked;
        this.changes = new Changes(places);
        this.ranks = new Ranks(options);
        this.window = window;
        this.endurance = endurance;
    }

    /** Whether there are enough movements for a wish, each by itself. */
    boolean served(Rule.Asked wish) {
        return places.stream()
                        .flatMap(place -> admitted(place).stream()
                                .filter(option -> wish.serves().test(option, place.kind())))
                        .map(option -> option.movement().id())
                        .distinct()
                        .limit(wish.least())
                        .count()
                >= wish.least();
    }

    /** Nothing is left that could stand anywhere. */
    boolean empty() {
        return places.isEmpty();
    }

    /** Made when it is first asked for: of many wishes it is enough to know whether anything serves them. */
    Problem problem() {
        if (problem == null) {
            problem = made();
        }
        return problem;
    }

    private Problem made() {
        List<Slot> slots = new ArrayList<>();
        for (Place place : places) {
            slots.add(new Slot(place.name(), candidates(place), place.first(), place.pause()));
        }
        List<Demand> demands = asked.stream()
                .map(each -> new Demand(each.words(), each.least()))
                .toList();
        return new Problem(
                slots,
                changes,
                demands,
                window,
                new Problem.Endurance(endurance.standingSeconds(), endurance.armsHighSeconds()));
    }

    private List<Candidate> candidates(Place place) {
        List<Candidate> candidates = new ArrayList<>();
        admitted(place).forEach(option -> candidates.add(candidate(place, option)));
        if (place.optional()) {
            candidates.add(new Candidate(END, "", 0, 0, Changes.END, 0, 0, 0));
        }
        return candidates;
    }

    /** Rules that yield hold where they leave a movement for each place of the part. */
    private List<Option> admitted(Place place) {
        List<Option> strictly = admitted(place, false);
        long movements = strictly.stream()
                .map(option -> option.movement().id())
                .distinct()
                .count();
        long alike =
                places.stream().filter(other -> other.kind() == place.kind()).count();
        return movements >= Math.min(alike, ENOUGH) || place.last() ? strictly : admitted(place, true);
    }

    private List<Option> admitted(Place place, boolean yielding) {
        return options.stream()
                .filter(option -> PlaceRule.all(context, place, option, yielding))
                .toList();
    }

    private Candidate candidate(Place place, Option option) {
        String id = option.id() + "/" + place.kind();
        byId.put(id, option);
        return new Candidate(
                id,
                option.movement().id(),
                Term.sum(context, place, option),
                place.seconds(option),
                changes.state(option.stance(), ranks.of(option, place.kind())),
                serves(place, option),
                option.lasts().standingSeconds(),
                option.lasts().armsHighSeconds());
    }

    private int serves(Place place, Option option) {
        int serves = 0;
        for (int d = 0; d < asked.size(); d++) {
            serves |= asked.get(d).serves().test(option, place.kind()) ? 1 << d : 0;
        }
        return serves;
    }

    /** An option in its place. */
    record Chosen(int slot, Place place, Option option) {}

    List<Chosen> chosen(List<Candidate> solution) {
        List<Chosen> chosen = new ArrayList<>();
        for (int s = 0; s < solution.size(); s++) {
            Option option = byId.get(solution.get(s).id());
            if (option != null) {
                chosen.add(new Chosen(s, places.get(s), option));
            }
        }
        return chosen;
    }

    Option option(Candidate candidate) {
        return byId.get(candidate.id());
    }

    Context context() {
        return context;
    }
}
