package newel.catalogue;

/** A demand that the easier variant of a link asks more of, before and after the step down. */
public record Rise(String demand, String before, String after) {
    @Override
    public String toString() {
        return demand + " " + before + " → " + after;
    }
}
