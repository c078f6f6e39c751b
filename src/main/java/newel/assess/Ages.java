package newel.assess;

/** Whole years, both ends included. */
public record Ages(int from, int to) {
    static final Ages ANY = new Ages(0, 130);

    public boolean hold(int age) {
        return from <= age && age <= to;
    }

    boolean overlap(Ages other) {
        return from <= other.to && other.from <= to;
    }

    /** As it is printed: {@code 60-64}; empty for any age. */
    public String text() {
        if (equals(ANY)) {
            return "";
        }
        return to == ANY.to ? from + " and over" : from + "-" + to;
    }
}
