package newel.client;

/** Diseases that count as known in the 2015 pre-participation screening (Riebe et al. 2015; diabetes, kidney from memory). */
public enum Disease implements Sign {
    HEART("heart", "Heart disease"),
    CIRCULATION("circulation", "Narrowed arteries in the legs or elsewhere"),
    STROKE("stroke", "A stroke or mini-stroke"),
    DIABETES("diabetes", "Diabetes, type 1 or 2"),
    KIDNEY("kidney", "Kidney disease");

    private final String code;
    private final String words;

    Disease(String code, String words) {
        this.code = code;
        this.words = words;
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public String words() {
        return words;
    }
}
