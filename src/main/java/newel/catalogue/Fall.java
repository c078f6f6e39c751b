package newel.catalogue;

/**
 * A demand that an easier variant asks less of, before and after the step down, ready to be read: angles in degrees, loads
 * in thousandths of body weight times stature, ways and widths in hundredths of stature.
 */
public record Fall(String demand, String before, String after) {
    @Override
    public String toString() {
        return demand + " " + before + " → " + after;
    }
}
