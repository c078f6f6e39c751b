package newel.web.movement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import newel.figure.Frame;
import newel.figure.Picture;

/**
 * A drawing as a file of its own: frames side by side on one floor.
 *
 * @param style of the person's looks
 * @param whole whether the pose before and words are drawn too; in a small picture they are a tangle
 */
public record DrawingPage(String css, String title, String style, String window, List<Placed> frames, boolean whole) {
    /** @param x left edge, points @param y top edge, points */
    public record Placed(Frame frame, String x, String y) {}

    private static final double GAP = 12;

    static DrawingPage all(String css, Picture picture) {
        return of(css, picture, picture.frames(), true);
    }

    static DrawingPage last(String css, Picture picture) {
        return of(css, picture, List.of(picture.finish()), false);
    }

    private static DrawingPage of(String css, Picture picture, List<Frame> frames, boolean whole) {
        double height = frames.stream()
                .mapToDouble(frame -> frame.bounds().height())
                .max()
                .orElse(0);
        double x = 0;
        List<Placed> placed = new ArrayList<>();
        for (Frame frame : frames) {
            placed.add(
                    new Placed(frame, number(x), number(height - frame.bounds().height())));
            x += frame.bounds().width() + GAP;
        }
        return new DrawingPage(
                css, picture.title(), picture.style(), "0 0 " + number(x - GAP) + " " + number(height), placed, whole);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
