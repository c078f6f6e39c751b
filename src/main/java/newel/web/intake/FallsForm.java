package newel.web.intake;

import java.util.List;
import newel.client.FallsAnswers;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.Reading;
import newel.web.form.Rows;
import newel.web.form.Span;
import newel.web.form.Typed;

/** Falls and the three key questions. The longer questionnaire has a page of its own. */
final class FallsForm {
    private static final Span FALLS = Span.of("the number of falls", "", 0, 99);

    static List<Ask> asks(Asking ask) {
        return List.of(
                ask.line("readiness-falls", "How many falls").keys("numeric").maybe(),
                Rows.row(ask, "readiness-falls-injured", "A fall needed care"),
                Rows.row(ask, "readiness-falls-floor", "Lay on the floor for an hour, or could not get up"),
                Rows.row(ask, "readiness-falls-fainted", "Lost consciousness"),
                Rows.row(ask, "readiness-falls-frail", "Is frail: tired, weak, lost weight, slow"),
                Rows.row(ask, "readiness-falls-unsteady", "Feels unsteady when standing or walking"),
                Rows.row(ask, "readiness-falls-worried", "Worries about falling"));
    }

    static FallsAnswers read(Reading reading) {
        return new FallsAnswers(
                reading.optionalWhole("readiness-falls", FALLS),
                Rows.answer(reading, "readiness-falls-injured"),
                Rows.answer(reading, "readiness-falls-floor"),
                Rows.answer(reading, "readiness-falls-fainted"),
                Rows.answer(reading, "readiness-falls-frail"),
                Rows.answer(reading, "readiness-falls-unsteady"),
                Rows.answer(reading, "readiness-falls-worried"));
    }

    static Typed fill(Typed typed, FallsAnswers f) {
        return typed.with("readiness-falls", Span.plain(f.fallsPastYear()))
                .with("readiness-falls-injured", Choice.of(f.injured()))
                .with("readiness-falls-floor", Choice.of(f.unableToRise()))
                .with("readiness-falls-fainted", Choice.of(f.lostConsciousness()))
                .with("readiness-falls-frail", Choice.of(f.frail()))
                .with("readiness-falls-unsteady", Choice.of(f.unsteady()))
                .with("readiness-falls-worried", Choice.of(f.worried()));
    }

    private FallsForm() {}
}
