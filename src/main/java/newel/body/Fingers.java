package newel.body;

/**
 * What the fingers of a free hand do; they carry no load and have no demands of their own.
 *
 * @param curl 0 straight and spread to 1 a soft fist
 * @param thumbTo which fingertip the thumb meets: 0 none, 1 the first finger to 4 the small finger
 */
public record Fingers(double curl, double thumbTo) {
    /** As a hand hangs. */
    public static final Fingers LOOSE = new Fingers(0.4, 0);

    static Fingers between(Fingers a, Fingers b, double share) {
        return new Fingers(Blend.of(a.curl, b.curl, share), Blend.of(a.thumbTo, b.thumbTo, share));
    }
}
