package newel.assess;

import java.math.BigDecimal;
import java.util.Map;
import newel.client.Part;

/** The three scores of the battery, 0 to 4 each. */
public record Sppb(int balance, int walk, int stands) {

    public int total() {
        return balance + walk + stands;
    }

    /** @param parts what was done; a part that is absent could not be done or was not tried, and earns nothing */
    static Sppb of(SppbPoints points, Map<Part, BigDecimal> parts) {
        return new Sppb(balance(points, parts), walk(points, parts), timed(points.stands(), parts.get(Part.STANDS)));
    }

    private static int balance(SppbPoints points, Map<Part, BigDecimal> parts) {
        if (!atLeast(parts.get(Part.SIDE_BY_SIDE), points.hold())) {
            return 0;
        }
        if (!atLeast(parts.get(Part.SEMI_TANDEM), points.hold())) {
            return 1;
        }
        BigDecimal tandem = parts.get(Part.TANDEM);
        if (!atLeast(tandem, points.tandemShort())) {
            return 2;
        }
        return atLeast(tandem, points.hold()) ? 4 : 3;
    }

    private static int walk(SppbPoints points, Map<Part, BigDecimal> parts) {
        BigDecimal course = parts.getOrDefault(Part.COURSE, BigDecimal.ZERO);
        Steps steps = points.walks().get(course);
        return steps == null ? 0 : timed(steps, parts.get(Part.WALK));
    }

    private static int timed(Steps steps, BigDecimal seconds) {
        return seconds == null ? 0 : steps.of(seconds);
    }

    private static boolean atLeast(BigDecimal seconds, BigDecimal wanted) {
        return seconds != null && seconds.compareTo(wanted) >= 0;
    }
}
