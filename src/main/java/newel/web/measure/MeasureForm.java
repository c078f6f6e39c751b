package newel.web.measure;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import newel.assess.Asked;
import newel.assess.FourStages;
import newel.assess.Guide;
import newel.assess.Guides;
import newel.body.Side;
import newel.client.Aid;
import newel.client.Done;
import newel.client.Measure;
import newel.client.Measured;
import newel.client.Part;
import newel.client.Quantity;
import newel.client.Unit;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Span;
import newel.web.form.Typed;

/** One result as typed. */
final class MeasureForm {
    private static final String VALUE = "value";
    private static final String UNIT = "unit";
    private static final String UNABLE = "unable";
    private static final String YES = "yes";
    private static final Span HOLD = Span.of("the seconds", "s", 0, 60);
    private static final Span LONG_TIME = new Span("the seconds", "s", 0.5, 180, 2);

    private static final List<Part> SPPB_PARTS =
            List.of(Part.SIDE_BY_SIDE, Part.SEMI_TANDEM, Part.TANDEM, Part.COURSE, Part.WALK, Part.STANDS);

    private final Guide guide;

    MeasureForm(Guide guide) {
        this.guide = guide;
    }

    List<Ask> asks(Asking ask) {
        List<Ask> asks = new ArrayList<>();
        if (guide.asks(Asked.PARTS)) {
            parts().forEach(part -> asks.add(part(ask, part)));
        } else {
            value(ask, asks);
        }
        if (guide.asks(Asked.SIDE)) {
            asks.add(ask.one("side", guide.sides(), sides()).shaped(Ask.Shape.BESIDE));
        }
        if (guide.asks(Asked.AID)) {
            asks.add(ask.one("aid", "What was held on to", aids()).maybe());
        }
        asks.add(ask.day("on", "Day of the test").hint("For example 27 2 2026"));
        return List.copyOf(asks);
    }

    private void value(Asking ask, List<Ask> asks) {
        Unit unit = guide.measure().unit();
        Ask.Line line = ask.line(VALUE, "Result");
        boolean two = unit.other() != unit;
        boolean minus = guide.least().signum() < 0;
        asks.add(
                two
                        ? line.keys(minus ? "text" : "decimal")
                                .hint(minus ? "Short of it is a minus number, like -2.5." : "")
                        : line.unit(unit.words()));
        if (two) {
            asks.add(ask.one(UNIT, "Measured in", units()).shaped(Ask.Shape.BESIDE));
        }
        if (guide.asks(Asked.ARMS)) {
            asks.add(ask.many("arms", "Arms", Map.of(YES, "The arms were needed to stand up"))
                    .maybe());
        }
        asks.add(ask.many(UNABLE, "Not done", Map.of(YES, "Tried, and could not be done or was stopped"))
                .hint("Leave the result empty then.")
                .maybe());
    }

    private Ask part(Asking ask, Part part) {
        if (part == Part.COURSE) {
            Map<String, String> courses = new LinkedHashMap<>();
            courses.put("4", "4 metres");
            courses.put("3", "3 metres");
            return ask.one(name(part), part.words(), courses).shaped(Ask.Shape.BESIDE);
        }
        Ask.Line line = ask.line(name(part), part.words()).unit(part.unit());
        if (part == Part.SIDE_BY_SIDE) {
            return line.hint("10 when it was held.");
        }
        line = line.maybe();
        return part == Part.WALK || part == Part.STANDS
                ? line.hint("Leave it empty when it could not be done.")
                : line.hint("10 when it was held; leave it empty when it was not tried.");
    }

    private List<Part> parts() {
        return guide.measure() == Measure.SPPB ? SPPB_PARTS : FourStages.STANCES;
    }

    private Map<String, String> units() {
        Unit own = guide.measure().unit();
        Map<String, String> units = new LinkedHashMap<>();
        for (Unit unit : metric(own) ? List.of(own, own.other()) : List.of(own.other(), own)) {
            units.put(Choice.of(unit), UnitWords.of(unit));
        }
        return units;
    }

    private static boolean metric(Unit unit) {
        return unit == Unit.KILOGRAMS || unit == Unit.METRES || unit == Unit.CENTIMETRES;
    }

    private static Map<String, String> sides() {
        Map<String, String> sides = new LinkedHashMap<>();
        sides.put(Choice.of(Side.LEFT), "Left");
        sides.put(Choice.of(Side.RIGHT), "Right");
        return sides;
    }

    private static Map<String, String> aids() {
        Map<String, String> aids = new LinkedHashMap<>();
        aids.put(Choice.of(Aid.NONE), "Nothing");
        aids.put(Choice.of(Aid.STICK), "A walking stick");
        aids.put(Choice.of(Aid.FRAME), "A walking frame");
        aids.put(Choice.of(Aid.OTHER), "Something else");
        return aids;
    }

    Parsed<Measured> parse(Typed typed, LocalDate today) {
        Reading reading = new Reading(typed);
        return guide.asks(Asked.PARTS) ? inParts(typed, reading, today) : one(typed, reading, today);
    }

    private Parsed<Measured> one(Typed typed, Reading reading, LocalDate today) {
        boolean unable = typed.has(UNABLE, YES);
        Unit own = guide.measure().unit();
        Unit unit = own.other() == own ? own : reading.one(UNIT, Unit.class, "Say what it was measured in.");
        reading.check(unit == null || unit.comparesWith(own), UNIT, "Say what it was measured in.");
        reading.check(
                !unable || typed.one(VALUE).isEmpty(),
                VALUE,
                "Leave the result empty, or take away the mark that it could not be done.");
        Double value = unable || unit == null || !unit.comparesWith(own) ? null : reading.number(VALUE, span(unit));
        Done done = done(typed, reading, unable);
        LocalDate on = day(reading, today);
        return reading.result(() ->
                new Measured(guide.measure(), Quantity.of(value == null ? 0 : value, unable ? own : unit), on, done));
    }

    private Span span(Unit unit) {
        Quantity least =
                new Quantity(guide.least(), guide.measure().unit()).in(unit).rounded(0);
        Quantity most =
                new Quantity(guide.most(), guide.measure().unit()).in(unit).rounded(0);
        boolean own = unit == guide.measure().unit();
        return new Span(
                "the result",
                unit.words(),
                (own ? guide.least() : least.amount()).doubleValue(),
                (own ? guide.most() : most.amount()).doubleValue(),
                guide.decimals());
    }

    private Parsed<Measured> inParts(Typed typed, Reading reading, LocalDate today) {
        Map<Part, BigDecimal> parts = new EnumMap<>(Part.class);
        for (Part part : parts()) {
            if (part == Part.COURSE) {
                course(typed, reading, parts);
            } else {
                Span span = part == Part.WALK || part == Part.STANDS ? LONG_TIME : HOLD;
                Double seconds = reading.optionalNumber(name(part), span);
                if (seconds != null) {
                    parts.put(part, BigDecimal.valueOf(seconds));
                }
            }
        }
        reading.need(
                !typed.one(name(Part.SIDE_BY_SIDE)).isEmpty(),
                name(Part.SIDE_BY_SIDE),
                "Give the seconds of the first stand; 0 when it could not be held.");
        inOrder(typed, reading, parts);
        Done done = done(typed, reading, false);
        LocalDate on = day(reading, today);
        return reading.result(() -> Guides.shipped().inParts(guide.measure(), parts, on, done));
    }

    /** A stand after one that was not held was not to be tried: one of the two is a slip. */
    private void inOrder(Typed typed, Reading reading, Map<Part, BigDecimal> parts) {
        List<Part> stands =
                parts().stream().filter(FourStages.STANCES::contains).toList();
        for (int i = 1; i < stands.size(); i++) {
            BigDecimal before = parts.get(stands.get(i - 1));
            boolean held = before != null && before.compareTo(FourStages.HOLD) >= 0;
            reading.check(
                    held || typed.one(name(stands.get(i))).isEmpty(),
                    name(stands.get(i)),
                    "Leave this stand empty: the one before it was not held for 10 seconds.");
        }
    }

    private void course(Typed typed, Reading reading, Map<Part, BigDecimal> parts) {
        String course = typed.one(name(Part.COURSE));
        boolean walked = !typed.one(name(Part.WALK)).isEmpty();
        boolean known = List.of("3", "4").contains(course);
        reading.check(known || course.isEmpty(), name(Part.COURSE), "Say how long the walk was.");
        reading.need(known || !walked, name(Part.COURSE), "Say how long the walk was.");
        if (known && walked) {
            parts.put(Part.COURSE, new BigDecimal(course));
        }
    }

    private Done done(Typed typed, Reading reading, boolean unable) {
        Side side = guide.asks(Asked.SIDE) ? reading.one("side", Side.class, "Choose the side.") : null;
        return new Done(
                unable,
                guide.asks(Asked.ARMS) && typed.has("arms", YES),
                side,
                guide.asks(Asked.AID) ? reading.one("aid", Aid.class, Aid.NONE) : Aid.NONE);
    }

    private static LocalDate day(Reading reading, LocalDate today) {
        LocalDate on = reading.date("on", "the day of the test");
        if (on != null) {
            reading.check(!on.isAfter(today), "on", "Check the day of the test: it lies in the future.");
            reading.check(on.isAfter(today.minusYears(20)), "on", "Check the year of the test: it is too long ago.");
        }
        return on;
    }

    private static String name(Part part) {
        return "part-" + Choice.of(part);
    }
}
