package newel.client;

/** Diseases that count as known in the 2015 pre-participation screening (Riebe et al. 2015; diabetes, kidney from memory). */
public enum Disease {
    HEART("Heart disease"),
    CIRCULATION("Narrowed arteries in the legs or elsewhere"),
    STROKE("A stroke or mini-stroke"),
    DIABETES("Diabetes, type 1 or 2"),
    KIDNEY("Kidney disease");

    private final String words;

    Disease(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
