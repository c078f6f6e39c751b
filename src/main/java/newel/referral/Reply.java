package newel.referral;

import java.time.LocalDate;
import java.util.List;

/**
 * What came back.
 *
 * @param who who answered
 * @param signsSeen the answer says that the clinician has looked at the very signs that were told
 * @param words what it says, in short
 * @param effects what it changed here, one sentence each
 */
public record Reply(
        LocalDate on, String who, Clearance clearance, boolean signsSeen, String words, List<String> effects) {
    public Reply {
        effects = List.copyOf(effects);
    }

    public Reply with(List<String> all) {
        return new Reply(on, who, clearance, signsSeen, words, all);
    }

    public enum Clearance {
        GIVEN("Exercise may go on"),
        UP_TO_MODERATE("Exercise may go on, light to moderate effort only"),
        NOT_GIVEN("No exercise for now"),
        NOT_SAID("The answer does not say");

        private final String words;

        Clearance(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        public boolean goesOn() {
            return this == GIVEN || this == UP_TO_MODERATE;
        }
    }
}
