package newel.figure;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** One thing to draw, in drawing order. */
public sealed interface Mark {
    Tone tone();

    List<Spot> spots();

    /** How far the mark reaches beyond its spots, points. */
    default double reach() {
        return 0;
    }

    default Mark withoutEdge() {
        return this;
    }

    /** A filled closed outline. Haloed ones get an edge in the colour of the sheet, so that limbs part. */
    record Outline(Tone tone, List<Spot> spots, boolean haloed) implements Mark {
        @Override
        public Mark withoutEdge() {
            return new Outline(tone, spots, false);
        }
    }

    /** An open line of a width in points. */
    record Line(Tone tone, List<Spot> spots, double width) implements Mark {
        @Override
        public double reach() {
            return width / 2;
        }

        public String widthText() {
            return number(width);
        }
    }

    /** The way of a moving part, with a head at its end. */
    record Arrow(List<Spot> spots, List<Spot> head) implements Mark {
        private static final double HALF_WIDTH = 3.5;

        @Override
        public Tone tone() {
            return Tone.ARROW;
        }

        @Override
        public double reach() {
            return HALF_WIDTH;
        }

        public String headText() {
            return pairs(head);
        }
    }

    /** Words under the figure, their middle at a spot. */
    record Words(String words, Spot at) implements Mark {
        /** Height of the letters of the style sheet and their mean width, points. */
        private static final double HIGH = 15;

        private static final double WIDE = 7.6;

        @Override
        public Tone tone() {
            return Tone.FACE;
        }

        @Override
        public List<Spot> spots() {
            double half = WIDE * words.length() / 2;
            return List.of(new Spot(at.x() - half, at.y() - HIGH, 0), new Spot(at.x() + half, at.y() + 3, 0));
        }

        public String xText() {
            return number(at.x());
        }

        public String yText() {
            return number(at.y());
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
