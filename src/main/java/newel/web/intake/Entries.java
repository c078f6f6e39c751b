package newel.web.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import newel.limit.Limitation;
import newel.limit.Presets;
import newel.store.Ids;
import newel.web.form.Parsed;
import newel.web.form.Typed;
import newel.web.limitation.LimitationForm;

/** The limitations taken down in an intake: each typed one is kept under a number of its own. */
record Entries(Presets presets) {
    static final String NEW = "entry-";

    LimitationForm form() {
        return new LimitationForm(presets, NEW);
    }

    /** Something was begun that is not added yet. */
    static boolean begun(Typed typed) {
        return !typed.one(NEW + "what").isEmpty() || !typed.one(NEW + "words").isEmpty();
    }

    /** The draft with the new entry moved under the next number. */
    Typed added(Typed draft, Typed typed) {
        int next = numbers(draft).isEmpty() ? 0 : numbers(draft).last() + 1;
        Typed all = draft.without(NEW);
        for (Map.Entry<String, List<String>> each : typed.under(NEW).values().entrySet()) {
            all = all.with(prefix(next) + each.getKey().substring(NEW.length()), each.getValue());
        }
        return all;
    }

    static Typed removed(Typed draft, int number) {
        return draft.without(prefix(number));
    }

    List<IntakePage.Added> told(Typed draft, LocalDate today) {
        List<IntakePage.Added> told = new ArrayList<>();
        for (int number : numbers(draft)) {
            parse(draft, number, today)
                    .value()
                    .ifPresent(each -> told.add(new IntakePage.Added(number, each.words() + side(each))));
        }
        return told;
    }

    private static String side(Limitation limitation) {
        return switch (limitation.side()) {
            case LEFT -> ", left side";
            case RIGHT -> ", right side";
            case BOTH -> "";
        };
    }

    List<Limitation> all(Typed draft, LocalDate today) {
        return numbers(draft).stream()
                .flatMap(number -> parse(draft, number, today).value().stream())
                .toList();
    }

    private Parsed<Limitation> parse(Typed draft, int number, LocalDate today) {
        return new LimitationForm(presets, prefix(number)).parse(draft, Ids.next(), today);
    }

    private static String prefix(int number) {
        return "limitations-" + number + "-";
    }

    private static TreeSet<Integer> numbers(Typed draft) {
        TreeSet<Integer> numbers = new TreeSet<>();
        for (String name : draft.values().keySet()) {
            if (name.matches("limitations-\\d{1,3}-.*")) {
                numbers.add(Integer.parseInt(name.split("-")[1]));
            }
        }
        return numbers;
    }
}
