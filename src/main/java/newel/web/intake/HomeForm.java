package newel.web.intake;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import newel.catalogue.Kit;
import newel.client.Answer;
import newel.client.Home;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.KitWords;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Span;
import newel.web.form.Typed;

/** What the home has and how much room there is. */
final class HomeForm {
    private static final Span CEILING = Span.of("the ceiling height", "cm", 180, 400);
    private static final Span CLEAR = Span.of("the clear floor", "m", 0, 20);

    static List<Ask> asks(Asking ask) {
        return List.of(
                ask.many("home-kit", "What is there to use", KitWords.labels())
                        .hint("The chair has no wheels and stands against a wall."),
                ask.line("home-ceiling", "Ceiling height")
                        .unit("cm")
                        .hint("240 cm is usual. Reaches overhead are checked against it."),
                ask.line("home-clear", "Clear floor beside the chair")
                        .unit("m")
                        .hint("How far the client could step without meeting anything."),
                ask.one("home-floor", "Gets down to the floor and up again", Choice.answers()));
    }

    static Parsed<Home> parse(Typed typed) {
        Reading reading = new Reading(typed);
        List<Kit> kit = reading.many("home-kit", Kit.class);
        reading.need(!kit.isEmpty(), "home-kit", "Choose at least one thing: a chair or a wall is enough to begin.");
        Integer ceiling = reading.whole("home-ceiling", CEILING);
        Double clear = reading.number("home-clear", CLEAR);
        Answer floor = reading.one("home-floor", Answer.class, "Say whether the client gets down to the floor and up.");
        return reading.result(() -> new Home(set(kit), ceiling, floor, clear));
    }

    private static Set<Kit> set(List<Kit> kit) {
        return EnumSet.copyOf(kit);
    }

    static Typed fill(Typed typed, Home home) {
        return typed.with("home-kit", Choice.all(home.kit()))
                .with("home-ceiling", String.valueOf(home.ceilingCm()))
                .with("home-clear", Span.plain(home.clearMetres()))
                .with("home-floor", Choice.of(home.floor()));
    }

    private HomeForm() {}
}
