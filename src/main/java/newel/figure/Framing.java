package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One window for all frames of a view, so that they stand side by side at one scale; the line of the floor in each; and
 * words under the frames where something has moved.
 *
 * @param under words that tell left from right
 */
record Framing(Bounds window, Optional<String> under) {
    private static final double MARGIN = 10;
    private static final double FLOOR_ENDS_INSIDE = 4;
    private static final double FLOOR = 1;
    private static final double WORDS_BELOW = 19;

    static Framing of(List<List<Mark>> drawn, Optional<String> under) {
        Bounds all = drawn.stream().map(Framing::around).reduce(Bounds::with).orElseThrow();
        Bounds floored = new Bounds(all.left(), all.top(), all.right(), Math.max(all.bottom(), FLOOR + 2));
        Bounds window = under.map(words -> withWords(floored, words)).orElse(floored);
        return new Framing(window.grown(MARGIN), under);
    }

    private static Bounds withWords(Bounds bounds, String words) {
        return bounds.with(Bounds.of(words(bounds, words).spots()));
    }

    private static Mark words(Bounds figure, String words) {
        return new Mark.Words(words, new Spot((figure.left() + figure.right()) / 2, figure.bottom() + WORDS_BELOW, 0));
    }

    private static Bounds around(List<Mark> marks) {
        return marks.stream()
                .map(mark -> Bounds.of(mark.spots()).grown(mark.reach()))
                .reduce(Bounds::with)
                .orElseThrow();
    }

    List<Frame> frames(List<List<Mark>> drawn) {
        List<Frame> frames = new ArrayList<>();
        for (int i = 0; i < drawn.size(); i++) {
            boolean says = i > 0 || drawn.size() == 1;
            frames.add(new Frame(
                    caption(i, drawn.size()),
                    window,
                    Stream.of(Stream.of(floor()), drawn.get(i).stream(), says ? said() : Stream.<Mark>empty())
                            .flatMap(marks -> marks)
                            .toList(),
                    false));
        }
        return frames;
    }

    /** The marks of one frame on the line of the floor. */
    List<Mark> floored(List<Mark> marks) {
        return Stream.concat(Stream.of(floor()), marks.stream()).toList();
    }

    private Stream<Mark> said() {
        return under.stream()
                .map(words -> new Mark.Words(
                        words, new Spot((window.left() + window.right()) / 2, window.bottom() - MARGIN - 3, 0)));
    }

    /** Another view, in a window as high as the others. */
    Frame also(List<Mark> marks, String caption) {
        Bounds own = around(marks).grown(MARGIN);
        double spare = Math.max(0, window.height() - own.height()) / 2;
        return new Frame(
                caption, new Bounds(own.left(), own.top() - spare, own.right(), own.bottom() + spare), marks, true);
    }

    private Mark floor() {
        return new Mark.Line(
                Tone.FLOOR,
                List.of(
                        new Spot(window.left() + FLOOR_ENDS_INSIDE, FLOOR, 0),
                        new Spot(window.right() - FLOOR_ENDS_INSIDE, FLOOR, 0)),
                1.5);
    }

    private static String caption(int i, int frames) {
        return frames == 1 ? "Hold" : i == 0 ? "Start" : i == frames - 1 ? "Finish" : "On the way";
    }
}
