package newel.catalogue;

/** Seconds out, held and back; one repetition is their sum. */
public record Tempo(double out, double hold, double back) {
    public double seconds() {
        return out + hold + back;
    }
}
