package newel.web.referral;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import newel.referral.Letter;
import newel.referral.Note;
import newel.referral.Stage;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.DateBoxes;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Typed;

/** That a note went out. */
final class SendForm {
    record Sending(LocalDate on, Stage.Way way) {}

    static List<Ask> asks(Asking ask) {
        Map<String, String> ways = new LinkedHashMap<>();
        Arrays.stream(Stage.Way.values()).forEach(each -> ways.put(Choice.of(each), capital(each.words())));
        return List.of(ask.one("send-way", "How it goes out", ways), ask.day("send-on", "Sent on"));
    }

    static Typed fill(LocalDate today) {
        return DateBoxes.fill(Typed.NOTHING, "send-on", today);
    }

    static Parsed<Sending> parse(Typed typed, Note note, Letter letter, LocalDate today) {
        Reading reading = new Reading(typed);
        reading.check(
                note.consent().allows(),
                "consent-said",
                "Ask the client first: a note is sent only when they have agreed.");
        reading.check(!note.draft().reason().isEmpty(), "draft-reason", "Say first why you write: type the reason.");
        reading.check(
                letter.fitsOnePage(),
                "facts",
                "The letter is longer than one page. Untick what the reader can do without.");
        Stage.Way way = reading.one("send-way", Stage.Way.class, "Choose how it goes out.");
        LocalDate on = reading.date("send-on", "the day on which it was sent");
        if (on != null) {
            reading.check(!on.isAfter(today), "send-on", "Check the day: it lies in the future.");
            reading.check(!on.isBefore(note.opened()), "send-on", "Check the day: the note was begun later than that.");
        }
        return reading.result(() -> new Sending(on, way));
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private SendForm() {}
}
