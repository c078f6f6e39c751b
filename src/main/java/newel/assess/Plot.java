package newel.assess;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * The results of one test over time, drawn over the range and the cut-offs that hold for the client's age on each day.
 *
 * <p>Lengths are in the units of the drawing, from its top left corner; y grows downward.
 *
 * @param bands the usual range; it has a step where the client comes into the next age band
 * @param cuts cut-offs, each with the letter that its meaning is told under
 * @param unit what the figures at the left are in
 * @param way the way from result to result, empty for one
 */
public record Plot(
        String title,
        String description,
        List<Band> bands,
        List<Cut> cuts,
        List<Dot> dots,
        String way,
        List<Tick> across,
        List<Tick> up,
        String unit) {
    public static final int WIDTH = 420;
    public static final int HEIGHT = 264;
    static final int LEFT = 46;
    static final int RIGHT = WIDTH - 52;
    static final int TOP = 26;
    static final int BOTTOM = HEIGHT - 34;

    public record Band(double x, double y, double width, double height) {
        public String xText() {
            return number(x);
        }

        public String yText() {
            return number(y);
        }

        public String widthText() {
            return number(width);
        }

        public String heightText() {
            return number(height);
        }
    }

    /** One stretch of a cut-off. */
    public record Cut(String letter, double from, double to, double y, boolean last) {
        public String fromText() {
            return number(from);
        }

        public String toText() {
            return number(to);
        }

        public String yText() {
            return number(y);
        }

        public String footText() {
            return number(y + 5);
        }
    }

    /** @param unable drawn as a cross at the worse edge */
    public record Dot(double x, double y, String label, boolean unable) {
        public String xText() {
            return number(x);
        }

        public String yText() {
            return number(y);
        }

        public String crossText() {
            return number(y + 8);
        }

        /** Where its figure stands: above it, or below where there is no room above. */
        public String labelText() {
            return number(y < TOP + 14 ? y + 24 : y - 12);
        }
    }

    public record Tick(double at, String words) {
        public String text() {
            return number(at);
        }

        /** Words near an edge stay inside it. */
        public String anchor() {
            double share = (at - LEFT) / (RIGHT - LEFT);
            return share < 0.3 ? "start" : share > 0.7 ? "end" : "middle";
        }

        /** Where the words' foot stands, so that they are level with the place. */
        public String footText() {
            return number(at + 5);
        }
    }

    /** With a point, whatever the machine's language, and no more than drawing needs. */
    static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
