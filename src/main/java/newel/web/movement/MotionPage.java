package newel.web.movement;

import java.util.List;
import java.util.stream.Stream;
import newel.catalogue.Breath;
import newel.catalogue.Variant;
import newel.figure.Film;
import newel.figure.Mark;

/**
 * A film as the script plays it.
 *
 * @param box left, top, width and height of the picture, points
 * @param going seconds from the first pose to the last; the hold there; the way back (nothing where it goes round)
 * @param out stretches of the loop, in seconds from its start, in which to breathe out
 */
public record MotionPage(
        List<String> box,
        String style,
        double going,
        double hold,
        double coming,
        List<List<Double>> out,
        List<List<List<Shape>>> passes) {
    /** A stretch that is held for long is cut short here: the words say how long (design choice), seconds. */
    private static final double LONGEST_HOLD = 3;
    /** The way there and back is never shown faster than this, seconds (design choice). */
    private static final double QUICKEST = 0.6;

    /** @param c class @param p points @param w width of an open line; null for a filled outline */
    public record Shape(String c, String p, String w) {}

    static MotionPage of(Variant variant, Film film) {
        double there = Math.max(QUICKEST, variant.tempo().out());
        double back = Math.max(QUICKEST, variant.tempo().back());
        double going = variant.round() ? there + back : there;
        double hold = Math.min(LONGEST_HOLD, variant.tempo().hold());
        double coming = variant.round() ? 0 : back;
        return new MotionPage(
                List.of(
                        Mark.number(film.window().left()),
                        Mark.number(film.window().top()),
                        Mark.number(film.window().width()),
                        Mark.number(film.window().height())),
                film.style(),
                going,
                hold,
                coming,
                out(variant.breath(), film.legs(), going, hold, coming),
                film.passes().stream().map(MotionPage::pass).toList());
    }

    private static List<List<Double>> out(Breath breath, int legs, double going, double hold, double coming) {
        double leg = going / legs;
        Stream<List<Double>> there =
                breath.outOnLegs().stream().sorted().map(each -> List.of((each - 1) * leg, each * leg));
        Stream<List<Double>> back =
                breath.outOnTheWayBack() ? Stream.of(List.of(going + hold, going + hold + coming)) : Stream.empty();
        return Stream.concat(there, back).toList();
    }

    private static List<List<Shape>> pass(List<List<Mark>> frames) {
        return frames.stream()
                .map(marks -> marks.stream().flatMap(MotionPage::shape).toList())
                .toList();
    }

    /** A film has no arrows and no words: what they say is seen. */
    private static Stream<Shape> shape(Mark mark) {
        return switch (mark) {
            case Mark.Outline o ->
                Stream.of(new Shape("t-" + o.tone().style() + (o.haloed() ? " halo" : ""), o.text(), null));
            case Mark.Line l -> Stream.of(new Shape("l-" + l.tone().style(), l.text(), l.widthText()));
            case Mark.Arrow a -> Stream.empty();
            case Mark.Words w -> Stream.empty();
        };
    }
}
