package newel.referral;

/**
 * Something that may go into a note when the instructor ticks it, in the very words that the reader gets.
 *
 * @param key the same whenever the same thing is offered
 */
public record Fact(String key, Part part, String text) {
    public enum Part {
        NEEDS("What helps to reach the client"),
        TOLD("Told by the client"),
        LOGGED("Logged limitations"),
        FOUND("What screening found"),
        MEASURED("Measured");

        private final String words;

        Part(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Whether it is something seen or measured, as against something told. */
    boolean finding() {
        return part == Part.FOUND || part == Part.MEASURED;
    }
}
