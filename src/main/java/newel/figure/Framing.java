package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Vec;

/** One window size for all frames, so that they stand side by side at one scale, and the line of the floor in each. */
final class Framing {
    private static final double MARGIN = 14;
    private static final double BELOW = 6;
    private static final double LEAST_BELOW_FLOOR = 4;
    private static final double FLOOR_ENDS_INSIDE = 4;

    static List<Frame> framed(Camera camera, List<List<Mark>> drawn) {
        Bounds window = window(drawn);
        Mark floor = floor(camera, window);
        List<Frame> frames = new ArrayList<>();
        for (int i = 0; i < drawn.size(); i++) {
            List<Mark> marks = new ArrayList<>();
            marks.add(floor);
            marks.addAll(drawn.get(i));
            frames.add(new Frame(caption(i, drawn.size()), window, marks));
        }
        return frames;
    }

    private static Bounds window(List<List<Mark>> drawn) {
        Bounds all = Bounds.of(drawn.stream()
                .flatMap(List::stream)
                .flatMap(mark -> mark.spots().stream())
                .toList());
        return new Bounds(
                all.left() - MARGIN,
                all.top() - MARGIN,
                all.right() + MARGIN,
                Math.max(LEAST_BELOW_FLOOR, all.bottom()) + BELOW);
    }

    private static Mark floor(Camera camera, Bounds window) {
        double y = camera.see(Vec.ZERO).y() + 1;
        return new Mark.Line(
                Tone.FLOOR,
                List.of(
                        new Spot(window.left() + FLOOR_ENDS_INSIDE, y, 0),
                        new Spot(window.right() - FLOOR_ENDS_INSIDE, y, 0)),
                1.5);
    }

    private static String caption(int i, int frames) {
        return frames == 1 ? "Hold" : i == 0 ? "Start" : i == frames - 1 ? "Finish" : "On the way";
    }

    private Framing() {}
}
