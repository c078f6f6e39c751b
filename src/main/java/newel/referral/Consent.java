package newel.referral;

import java.time.LocalDate;

/** What the client said to a note being written and sent. It is asked and kept before anything goes into the note. */
public sealed interface Consent {

    /** Whether the note may be filled and sent. */
    default boolean allows() {
        return this instanceof Given || this instanceof Without;
    }

    /** As it stands at the end of a letter. */
    String line();

    record NotAsked() implements Consent {
        @Override
        public String line() {
            return "Not asked yet.";
        }
    }

    /**
     * @param who who agreed: the client, or whoever speaks for them
     * @param what what may be shared
     * @param with with whom
     */
    record Given(String who, String what, String with, LocalDate on, How how) implements Consent {
        @Override
        public String line() {
            return "%s agreed on %s, %s, that this is shared with %s: %s."
                    .formatted(who, Days.of(on), how.words(), with, what);
        }
    }

    record Refused(LocalDate on, String words) implements Consent {
        @Override
        public String line() {
            return "Refused on " + Days.of(on) + (words.isEmpty() ? "." : ": " + words);
        }
    }

    /** In an emergency only. */
    record Without(LocalDate on, String reason) implements Consent {
        @Override
        public String line() {
            return "Shared without consent on " + Days.of(on) + " because of an emergency: " + reason;
        }
    }

    enum How {
        SPOKEN("by word of mouth"),
        WRITTEN("in writing"),
        FOR_THE_CLIENT("through the person who speaks for the client");

        private final String words;

        How(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
