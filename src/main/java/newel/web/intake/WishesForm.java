package newel.web.intake;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import newel.client.Experience;
import newel.client.Goal;
import newel.client.Wishes;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Span;
import newel.web.form.Typed;

/** What the client wants to do again, and when. */
final class WishesForm {
    private static final Span MINUTES =
            Span.of("the minutes of one session", "min", Wishes.LEAST_MINUTES, Wishes.MOST_MINUTES);

    static List<Ask> asks(Asking ask) {
        return List.of(
                ask.many("wishes-goals", "What the client wants to do again or better", goals()),
                ask.line("wishes-minutes", "Minutes for one session")
                        .unit("min")
                        .hint("From 10 to 60. 25 suits most beginners."),
                ask.many("wishes-days", "Days of the week", days())
                        .hint("Three days or more serve balance best (WHO 2020).")
                        .shaped(Ask.Shape.BESIDE),
                ask.one("wishes-experience", "Used to exercise", experience()));
    }

    private static Map<String, String> goals() {
        Map<String, String> goals = new LinkedHashMap<>();
        for (Goal goal : Goal.values()) {
            goals.put(Choice.of(goal), goal.words());
        }
        return goals;
    }

    private static Map<String, String> days() {
        Map<String, String> days = new LinkedHashMap<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            days.put(Choice.of(day), day.getDisplayName(TextStyle.FULL, Locale.ENGLISH));
        }
        return days;
    }

    private static Map<String, String> experience() {
        Map<String, String> experience = new LinkedHashMap<>();
        experience.put(Choice.of(Experience.NEW), "New to it, or long ago");
        experience.put(Choice.of(Experience.SOME), "Some, now and then");
        experience.put(Choice.of(Experience.REGULAR), "Regular, for months");
        return experience;
    }

    static Parsed<Wishes> parse(Typed typed) {
        Reading reading = new Reading(typed);
        List<Goal> goals = reading.many("wishes-goals", Goal.class);
        reading.need(!goals.isEmpty(), "wishes-goals", "Choose at least one goal.");
        Integer minutes = reading.whole("wishes-minutes", MINUTES);
        List<DayOfWeek> days = reading.many("wishes-days", DayOfWeek.class);
        reading.need(!days.isEmpty(), "wishes-days", "Choose at least one day.");
        Experience experience =
                reading.one("wishes-experience", Experience.class, "Say how used to exercise the client is.");
        return reading.result(() -> new Wishes(goals, minutes, EnumSet.copyOf(days), experience));
    }

    static Typed fill(Typed typed, Wishes wishes) {
        return typed.with("wishes-goals", Choice.all(wishes.goals()))
                .with("wishes-minutes", String.valueOf(wishes.minutes()))
                .with("wishes-days", Choice.all(wishes.days()))
                .with("wishes-experience", Choice.of(wishes.experience()));
    }

    private WishesForm() {}
}
