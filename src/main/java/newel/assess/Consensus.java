package newel.assess;

/**
 * Working groups on muscle loss that put their lines at different places; a practice follows one of them. Where to begin
 * stays with the European lines, which the rule on it was made with (design choice).
 */
public enum Consensus {
    EUROPE("European working group (EWGSOP2 2019)"),
    ASIA("Asian working group (AWGS 2019)");

    private final String words;

    Consensus(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
