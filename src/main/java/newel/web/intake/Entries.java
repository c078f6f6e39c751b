package newel.web.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import newel.limit.Called;
import newel.limit.Limitation;
import newel.limit.Presets;
import newel.store.Ids;
import newel.web.form.Parsed;
import newel.web.form.Typed;
import newel.web.limitation.LimitationForm;

/** The limitations taken down in an intake: each typed one is kept under a number of its own. */
record Entries(Presets presets) {
    static final String NEW = "entry-";
    private static final String TAKEN = "taken";

    LimitationForm form() {
        return new LimitationForm(presets, NEW);
    }

    /** Something was begun that is not added yet; the day since when is filled in beforehand and does not count. */
    static boolean begun(Typed typed) {
        return typed.under(NEW).values().entrySet().stream()
                .filter(each -> !each.getKey().startsWith(NEW + "since-"))
                .flatMap(each -> each.getValue().stream())
                .anyMatch(value -> !value.isBlank());
    }

    /** The draft with the new entry moved under the next number, marked with the day it was taken down. */
    Typed added(Typed draft, Typed typed, LocalDate today) {
        int next = numbers(draft).isEmpty() ? 0 : numbers(draft).last() + 1;
        Typed all = draft.without(NEW).with(prefix(next) + TAKEN, today.toString());
        for (Map.Entry<String, List<String>> each : typed.under(NEW).values().entrySet()) {
            all = all.with(prefix(next) + each.getKey().substring(NEW.length()), each.getValue());
        }
        return all;
    }

    static Typed removed(Typed draft, int number) {
        return draft.without(prefix(number));
    }

    List<IntakePage.Added> told(Typed draft) {
        List<IntakePage.Added> told = new ArrayList<>();
        for (int number : numbers(draft)) {
            String words = parse(draft, number)
                    .value()
                    .map(Called::of)
                    .orElse("One that cannot be read any more: remove it and take it down again");
            told.add(new IntakePage.Added(number, words));
        }
        return told;
    }

    /** Whether one that was taken down would be lost: none ever is, the intake stays open instead. */
    boolean unreadable(Typed draft) {
        return numbers(draft).stream()
                .anyMatch(number -> parse(draft, number).value().isEmpty());
    }

    List<Limitation> all(Typed draft) {
        return numbers(draft).stream()
                .map(number -> parse(draft, number).value().orElseThrow())
                .toList();
    }

    /** Those that can be read. */
    List<Limitation> readable(Typed draft) {
        return numbers(draft).stream()
                .flatMap(number -> parse(draft, number).value().stream())
                .toList();
    }

    /** Judged by the day it was taken down: a review that has come since is due, not wrong. */
    private Parsed<Limitation> parse(Typed draft, int number) {
        LocalDate taken = LocalDate.parse(draft.one(prefix(number) + TAKEN));
        return new LimitationForm(presets, prefix(number)).parse(draft, Ids.next(), taken);
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
