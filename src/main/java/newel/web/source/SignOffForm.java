package newel.web.source;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import newel.practice.Rulebook;
import newel.practice.SignOff;
import newel.source.Statement;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Typed;

/** Which rules somebody signs off, and who that is. */
final class SignOffForm {
    private static final int LONGEST_LINE = 80;

    static List<Ask> asks(Asking ask) {
        return List.of(
                ask.line("sign-who", "Name of the clinician"),
                ask.line("sign-role", "Role and registration").hint("For example: physiotherapist, PH 12345"),
                ask.day("sign-on", "Day on which it was signed"),
                ask.many(
                                "sign-read",
                                "Said by the clinician",
                                Map.of("yes", "I have read these rules and agree that this practice works by them."))
                        .hint("Tick it with the clinician present, or with their written word at hand."));
    }

    static Parsed<List<SignOff>> parse(Typed typed, Rulebook rulebook, LocalDate today) {
        Reading reading = new Reading(typed);
        List<Statement> chosen = chosen(typed, rulebook);
        reading.need(!chosen.isEmpty(), SignOffPage.EVERY, "Tick at least one rule, or every rule.");
        String who = reading.text("sign-who", "the name of the clinician", LONGEST_LINE);
        String role = reading.text("sign-role", "the role", LONGEST_LINE);
        LocalDate on = reading.date("sign-on", "the day on which it was signed");
        if (on != null) {
            reading.check(!on.isAfter(today), "sign-on", "Check the day: it lies in the future.");
        }
        reading.need(typed.has("sign-read", "yes"), "sign-read", "Tick that the clinician has read the rules.");
        return reading.result(() -> chosen.stream()
                .map(each -> new SignOff(each.rule().id(), each.signed(), who, role, on))
                .toList());
    }

    /** Rules that are no longer there are passed over. */
    static List<Statement> chosen(Typed typed, Rulebook rulebook) {
        boolean every = typed.has(SignOffPage.EVERY, "yes");
        return rulebook.all().stream()
                .filter(each ->
                        every || typed.has(SignOffPage.RULES, each.rule().id()))
                .toList();
    }

    private SignOffForm() {}
}
