package newel.web.movement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import newel.figure.Frame;
import newel.figure.Picture;

/**
 * A drawing as a file of its own: frames side by side on one floor.
 *
 * @param ghosts whether the pose before is drawn too; in a small picture it is a tangle
 */
public record DrawingPage(String css, String style, String title, String window, List<Placed> frames, boolean ghosts) {
    /** @param x left edge, points @param y top edge, points */
    public record Placed(Frame frame, String x, String y) {}

    private static final double GAP = 12;

    static DrawingPage all(String css, Picture picture) {
        return of(css, picture, picture.frames(), true);
    }

    static DrawingPage last(String css, Picture picture) {
        return of(css, picture, List.of(picture.finish()), false);
    }

    private static DrawingPage of(String css, Picture picture, List<Frame> frames, boolean ghosts) {
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
                css, picture.style(), picture.title(), "0 0 " + number(x - GAP) + " " + number(height), placed, ghosts);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
