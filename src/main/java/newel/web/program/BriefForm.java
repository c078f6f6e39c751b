package newel.web.program;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import newel.catalogue.Catalogue;
import newel.catalogue.Purpose;
import newel.client.Wishes;
import newel.program.Brief;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Typed;

/** What composing is asked for, as typed and chosen. */
record BriefForm(Catalogue catalogue) {
    static final String MINUTES = "minutes";
    static final String MORE = "more";
    static final String IN = "in";
    static final String OUT = "out";
    /** A choice of one more movement beside those that are ticked. */
    static final String ALSO_IN = "also-in";

    static final String ALSO_OUT = "also-out";
    /** More of everything would be more of nothing (design choices). */
    private static final int MOST_MORE = 3;

    private static final int MOST_IN = 7;

    Parsed<Brief> parse(Typed typed) {
        Faults faults = new Faults();
        int minutes = minutes(typed, faults);
        Set<String> in = movements(typed, IN, ALSO_IN, faults);
        Set<String> out = movements(typed, OUT, ALSO_OUT, faults);
        Set<Purpose> more = more(typed);
        if (more.size() > MOST_MORE) {
            faults.wrong(MORE, "Choose at most %d to do more of.".formatted(MOST_MORE));
        }
        if (in.size() > MOST_IN) {
            faults.wrong(ALSO_IN, "Choose at most %d that are always in.".formatted(MOST_IN));
        }
        return Parsed.of(faults, () -> new Brief(minutes, in, out, more));
    }

    private static int minutes(Typed typed, Faults faults) {
        String text = typed.one(MINUTES);
        int minutes = text.matches("\\d{1,3}") ? Integer.parseInt(text) : 0;
        if (minutes < Wishes.LEAST_MINUTES || minutes > Wishes.MOST_MINUTES) {
            faults.wrong(
                    MINUTES,
                    "Minutes must be a whole number from %d to %d."
                            .formatted(Wishes.LEAST_MINUTES, Wishes.MOST_MINUTES));
        }
        return minutes;
    }

    private Set<String> movements(Typed typed, String ticked, String also, Faults faults) {
        Set<String> movements = new HashSet<>(typed.all(ticked));
        if (!typed.one(also).isEmpty()) {
            movements.add(typed.one(also));
        }
        if (movements.stream().anyMatch(id -> catalogue.movement(id).isEmpty())) {
            faults.wrong(also, "Choose a movement from the list.");
        }
        return movements;
    }

    private static Set<Purpose> more(Typed typed) {
        Set<Purpose> more = new HashSet<>();
        for (Purpose purpose : Purpose.values()) {
            if (typed.has(MORE, value(purpose))) {
                more.add(purpose);
            }
        }
        return more;
    }

    static Typed typed(Brief brief) {
        return Typed.NOTHING
                .with(MINUTES, String.valueOf(brief.minutes()))
                .with(IN, List.copyOf(brief.pinned()))
                .with(OUT, List.copyOf(brief.banned()))
                .with(MORE, brief.moreOf().stream().map(BriefForm::value).toList());
    }

    static String value(Purpose purpose) {
        return purpose.name().toLowerCase(Locale.ROOT);
    }
}
