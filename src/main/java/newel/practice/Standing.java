package newel.practice;

import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Whether a clinician has signed a rule off, in words that stand beside every result. */
public sealed interface Standing {
    DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    String words();

    default boolean signed() {
        return this instanceof Signed;
    }

    record Needed() implements Standing {
        @Override
        public String words() {
            return "Needs a clinician's sign-off";
        }
    }

    record Signed(SignOff by) implements Standing {
        @Override
        public String words() {
            return "Signed off by " + by.who() + ", " + by.role() + ", " + DAY.format(by.on());
        }
    }

    /** Was signed, and says something else since. */
    record Changed(SignOff by) implements Standing {
        @Override
        public String words() {
            return "Changed since " + by.who() + " signed it on " + DAY.format(by.on())
                    + ": needs a clinician's sign-off again";
        }
    }
}
