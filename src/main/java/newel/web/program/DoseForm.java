package newel.web.program;

import newel.catalogue.Dose;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Typed;

/** Sets, repetitions and seconds as typed; the most of each is a design choice that keeps slips of the finger out. */
final class DoseForm {
    /** The field that stands first, for what is about the whole dose. */
    static final String FIRST = "repetitions";

    private static final int MOST_SETS = 5;
    private static final int MOST_REPETITIONS = 60;
    private static final int MOST_SECONDS = 600;

    static Parsed<Dose> parse(Typed typed) {
        Faults faults = new Faults();
        int sets = number(typed, "sets", "Sets", 1, MOST_SETS, faults);
        int repetitions = number(typed, "repetitions", "Times", 0, MOST_REPETITIONS, faults);
        int seconds = number(typed, "seconds", "Seconds", 0, MOST_SECONDS, faults);
        if (faults.none() && repetitions == 0 && seconds == 0) {
            faults.wrong(FIRST, "Give how many times, or how many seconds, or both.");
        }
        return Parsed.of(faults, () -> new Dose(sets, repetitions, seconds));
    }

    private static int number(Typed typed, String name, String label, int least, int most, Faults faults) {
        String text = typed.one(name);
        if (text.isEmpty() && least == 0) {
            return 0;
        }
        boolean whole = text.matches("\\d{1,4}");
        int value = whole ? Integer.parseInt(text) : -1;
        if (value < least || value > most) {
            faults.wrong(name, "%s must be a whole number from %d to %d.".formatted(label, least, most));
        }
        return value;
    }

    private DoseForm() {}
}
