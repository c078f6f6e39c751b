package newel.web.referral;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import newel.referral.Consent;
import newel.referral.Draft;
import newel.screen.Urgency;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.DateBoxes;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Typed;

/** What the client said when asked. */
final class ConsentForm {
    private static final int LONGEST = 200;

    enum Said {
        AGREES,
        REFUSES,
        NOT_ASKED
    }

    static List<Ask> asks(Asking ask, Draft draft) {
        Map<String, String> said = new LinkedHashMap<>();
        said.put(Choice.of(Said.AGREES), "Agrees that it is sent");
        said.put(Choice.of(Said.REFUSES), "Does not agree");
        if (draft.urgency() == Urgency.EMERGENCY) {
            said.put(Choice.of(Said.NOT_ASKED), "Cannot be asked: this is an emergency");
        }
        Map<String, String> how = new LinkedHashMap<>();
        Arrays.stream(Consent.How.values()).forEach(each -> how.put(Choice.of(each), capital(each.words())));
        return List.of(
                ask.one("consent-said", "The client", said),
                ask.day("consent-on", "Asked on"),
                new Ask.Group(
                        "Who agreed, and to what",
                        "Only when they agree.",
                        List.of(
                                ask.line("consent-who", "Who agreed").maybe(),
                                ask.line("consent-with", "It is shared with").maybe(),
                                ask.line("consent-what", "What is shared").maybe(),
                                ask.one("consent-how", "How", how).maybe())),
                ask.words(
                                "consent-words",
                                draft.urgency() == Urgency.EMERGENCY
                                        ? "Why not, or why they could not be asked"
                                        : "Why not, if they said why")
                        .maybe());
    }

    static Typed fill(Draft draft, String name, LocalDate today) {
        Typed typed = Typed.NOTHING
                .with("consent-who", name)
                .with("consent-with", draft.reader().isEmpty() ? draft.to().within() : draft.readerLine())
                .with("consent-what", "the reason for this note and what is found in it")
                .with("consent-how", Choice.of(Consent.How.SPOKEN));
        return DateBoxes.fill(typed, "consent-on", today);
    }

    static Parsed<Consent> parse(Typed typed, Draft draft, LocalDate today) {
        Reading reading = new Reading(typed);
        Said said = reading.one("consent-said", Said.class, "Say whether the client agrees.");
        LocalDate on = reading.date("consent-on", "the day on which they were asked");
        if (on != null) {
            reading.check(!on.isAfter(today), "consent-on", "Check the day: it lies in the future.");
        }
        if (said == null) {
            return reading.result(() -> null);
        }
        return switch (said) {
            case AGREES -> given(reading, on);
            case REFUSES -> {
                String words = reading.optionalText("consent-words", "what they said", LONGEST);
                yield reading.result(() -> new Consent.Refused(on, words == null ? "" : words));
            }
            case NOT_ASKED -> {
                reading.check(
                        draft.urgency() == Urgency.EMERGENCY,
                        "consent-said",
                        "Ask first: only an emergency is recorded without the client's word.");
                String why = reading.text("consent-words", "why the client could not be asked", LONGEST);
                yield reading.result(() -> new Consent.Without(on, why));
            }
        };
    }

    private static Parsed<Consent> given(Reading reading, LocalDate on) {
        String who = reading.text("consent-who", "who agreed", LONGEST);
        String with = reading.text("consent-with", "with whom it is shared", LONGEST);
        String what = reading.text("consent-what", "what is shared", LONGEST);
        Consent.How how = reading.one("consent-how", Consent.How.class, "Choose how they agreed.");
        return reading.result(() -> new Consent.Given(who, what, with, on, how));
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private ConsentForm() {}
}
