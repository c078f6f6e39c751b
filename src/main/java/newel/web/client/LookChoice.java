package newel.web.client;

import java.util.ArrayList;
import java.util.List;
import newel.figure.Look;
import newel.figure.Looks;
import newel.web.form.Faults;

/** Who may be drawn in a client's pictures, and who is. */
public record LookChoice(List<Option> options, Faults faults) {
    static final String FIELD = "look";
    /** What the form and paths say for nobody in particular, which is stored as no id. */
    private static final String DIFFERENT = "different";

    private static final String DIFFERENT_PEOPLE = "different people";

    /** @param portraits ids of the looks that stand for it */
    public record Option(String value, String label, List<String> portraits, boolean chosen) {
        public String id() {
            return FIELD + "-" + value;
        }
    }

    static LookChoice of(String look, Faults faults) {
        List<Option> options = new ArrayList<>();
        List<String> some = Looks.all().stream().limit(3).map(Look::id).toList();
        options.add(option(DIFFERENT, DIFFERENT_PEOPLE, some, look.isEmpty()));
        for (Look each : Looks.all()) {
            options.add(option(
                    each.id(), each.label(), List.of(each.id()), each.id().equals(look)));
        }
        return new LookChoice(List.copyOf(options), faults);
    }

    private static Option option(String value, String label, List<String> portraits, boolean chosen) {
        return new Option(value, Character.toUpperCase(label.charAt(0)) + label.substring(1), portraits, chosen);
    }

    static Faults unknown() {
        Faults faults = new Faults();
        faults.wrong(FIELD + "-" + DIFFERENT, "Choose one of the people shown, or different people.");
        return faults;
    }

    static boolean offers(String value) {
        return value.equals(DIFFERENT) || Looks.of(value).isPresent();
    }

    /** The id that is stored for what the form says. */
    static String stored(String value) {
        return value.equals(DIFFERENT) ? "" : value;
    }

    /** What the form says for the id that is stored. */
    static String said(String look) {
        return look.isEmpty() ? DIFFERENT : look;
    }

    static String words(String look) {
        return Looks.of(look).map(Look::label).orElse(DIFFERENT_PEOPLE);
    }
}
