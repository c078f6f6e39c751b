package newel.referral;

import java.time.LocalDate;

/** How far a note has come. */
public sealed interface Stage {

    record Drafted() implements Stage {}

    /** @param letter as it went out, word for word */
    record Sent(LocalDate on, Way way, Letter letter, ClientCopy copy) implements Stage {}

    record Answered(Sent sent, Reply reply) implements Stage {}

    /** Never sent. */
    record Dropped() implements Stage {}

    enum Way {
        HANDED_OVER("handed to the client on paper"),
        POST("by post"),
        EMAIL("by email"),
        IN_PERSON("handed over in person");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
