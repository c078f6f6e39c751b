package newel.web.limitation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.limit.Loosening;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Span;
import newel.web.form.Typed;

/** Each limit of a limitation: a figure to change where it has one, else whether it holds. */
final class LimitsForm {
    record Change(List<Limit> limits, String reason) {}

    private static final String HOLDS = "holds";
    private static final int SHORTEST_REASON = 8;
    private static final int LONGEST_REASON = 400;

    static List<Ask> asks(Limitation limitation, Asking ask) {
        List<Ask> asks = new ArrayList<>();
        for (int i = 0; i < limitation.limits().size(); i++) {
            Limit limit = limitation.limits().get(i);
            String name = name(i);
            String label = MotionWords.of(limit);
            asks.add(
                    figure(limit).isPresent()
                            ? ask.line(name, label).unit(unit(limit))
                            : ask.one(name, label, holds()).shaped(Ask.Shape.BESIDE));
        }
        asks.add(ask.words("why", "Why")
                .hint("Needed to loosen what a clinician ordered. It is kept with the limitation.")
                .maybe());
        return asks;
    }

    private static Map<String, String> holds() {
        Map<String, String> holds = new LinkedHashMap<>();
        holds.put(HOLDS, "Holds");
        holds.put("ends", "No longer holds");
        return holds;
    }

    private static String name(int index) {
        return "limit-" + index;
    }

    static Typed fill(Limitation limitation) {
        Typed typed = Typed.NOTHING;
        for (int i = 0; i < limitation.limits().size(); i++) {
            Optional<Double> figure = figure(limitation.limits().get(i));
            typed = typed.with(name(i), figure.map(Span::plain).orElse(HOLDS));
        }
        return typed;
    }

    static Parsed<Change> parse(Limitation limitation, Typed typed) {
        Reading reading = new Reading(typed);
        List<Limit> limits = new ArrayList<>();
        for (int i = 0; i < limitation.limits().size(); i++) {
            Limit limit = limitation.limits().get(i);
            if (figure(limit).isPresent()) {
                Double figure = reading.number(name(i), span(limit));
                if (figure != null) {
                    limits.add(with(limit, figure));
                }
            } else if (!"ends".equals(typed.one(name(i)))) {
                limits.add(limit);
            }
        }
        String reason = reading.optionalText("why", "the reason", LONGEST_REASON);
        boolean unexplained = reason == null || reason.length() < SHORTEST_REASON;
        if (reading.faults().none()) {
            reading.check(
                    !(Loosening.asksForReason(limitation, limits) && unexplained),
                    "why",
                    "Write why: a clinician ordered this, and you loosen it.");
        }
        return reading.result(() -> new Change(List.copyOf(limits), reason == null ? "" : reason));
    }

    private static Optional<Double> figure(Limit limit) {
        return switch (limit) {
            case Limit.Angle a -> Optional.of(a.maxDegrees());
            case Limit.Time t -> Optional.of((double) t.maxSeconds());
            case Limit.EffortAtMost e -> Optional.of((double) e.most());
            case Limit.CoordinationAtMost c -> Optional.of((double) c.most());
            case Limit.Load l -> Optional.empty();
            case Limit.Positions p -> Optional.empty();
            case Limit.SupportNeeded s -> Optional.empty();
            case Limit.GripAtMost g -> Optional.empty();
            case Limit.NoWristWeight w -> Optional.empty();
            case Limit.HeldAtMost h -> Optional.empty();
            case Limit.Avoid a -> Optional.empty();
            case Limit.KitAtHome k -> Optional.empty();
            case Limit.Ceiling c -> Optional.empty();
            case Limit.ClearSpace c -> Optional.empty();
            case Limit.Withheld w -> Optional.empty();
        };
    }

    private static Limit with(Limit limit, double figure) {
        return switch (limit) {
            case Limit.Angle a -> new Limit.Angle(a.motion(), a.side(), figure);
            case Limit.Time t -> new Limit.Time(t.what(), (int) figure);
            case Limit.EffortAtMost e -> new Limit.EffortAtMost((int) figure);
            case Limit.CoordinationAtMost c -> new Limit.CoordinationAtMost((int) figure);
            default -> limit;
        };
    }

    private static String unit(Limit limit) {
        return limit instanceof Limit.Angle ? "degrees" : limit instanceof Limit.Time ? "seconds" : "";
    }

    private static Span span(Limit limit) {
        if (limit instanceof Limit.Angle) {
            return Span.of("the angle", "degrees", 0, 180);
        }
        if (limit instanceof Limit.Time) {
            return Span.of("the time", "seconds", 0, 600);
        }
        return limit instanceof Limit.EffortAtMost
                ? Span.of("the effort", "", 1, 10)
                : Span.of("the coordination", "", 1, 3);
    }

    private LimitsForm() {}
}
