package newel.figure;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** One thing to draw, in drawing order. */
public sealed interface Mark {
    Tone tone();

    List<Spot> spots();

    /** A filled closed outline. Haloed ones get an edge in the colour of the sheet, so that limbs part. */
    record Outline(Tone tone, List<Spot> spots, boolean haloed) implements Mark {}

    /** An open line of a width in points. */
    record Line(Tone tone, List<Spot> spots, double width) implements Mark {
        public String widthText() {
            return number(width);
        }
    }

    /** The true path of a moving part, with a head at its end. */
    record Arrow(List<Spot> spots, List<Spot> head) implements Mark {
        @Override
        public Tone tone() {
            return Tone.ARROW;
        }

        public String headText() {
            return pairs(head);
        }
    }

    /** Coordinates as x,y pairs, a decimal point in every language. */
    default String text() {
        return pairs(spots());
    }

    static String pairs(List<Spot> spots) {
        return spots.stream().map(s -> number(s.x()) + "," + number(s.y())).collect(Collectors.joining(" "));
    }

    static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
