package newel.web.referral;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import newel.client.Answer;
import newel.client.Client;
import newel.client.Symptom;
import newel.limit.Limitation;
import newel.limit.Presets;
import newel.referral.Reply;
import newel.referral.Stage;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.DateBoxes;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Typed;
import newel.web.limitation.LimitationForm;

/** What came back, with a limit that it may ask for. */
final class ReplyForm {
    /** @param limit what the answer asks for, to be logged as any other limitation */
    record Came(Reply reply, Optional<Limitation> limit) {}

    static final String LIMIT = "limit-";
    private static final int LONGEST_LINE = 80;
    private static final int LONGEST = 400;

    private final LimitationForm limits;

    ReplyForm(Presets presets) {
        this.limits = new LimitationForm(presets, LIMIT);
    }

    List<Ask> asks(Asking ask, Client client) {
        Map<String, String> clearances = new LinkedHashMap<>();
        Arrays.stream(Reply.Clearance.values()).forEach(each -> clearances.put(Choice.of(each), each.words()));
        Ask who = ask.line("reply-who", "Who answered");
        Ask on = ask.day("reply-on", "Answered on");
        Ask clearance = ask.one("reply-clearance", "May exercise go on?", clearances);
        Ask words = ask.words("reply-words", "What it says, in short").maybe();
        return told(client) ? List.of(who, on, clearance, signs(ask), words) : List.of(who, on, clearance, words);
    }

    private static Ask signs(Asking ask) {
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("yes", "Yes");
        answers.put("no", "No, or it does not say");
        return ask.one("reply-signs", "Has the clinician looked at the very signs that the client told?", answers)
                .shaped(Ask.Shape.BESIDE);
    }

    List<Ask> limitAsks(Asking ask) {
        return limits.asks(ask);
    }

    static boolean told(Client client) {
        return !client.readiness().symptoms().all(Symptom.class, Answer.YES).isEmpty();
    }

    static Typed fill(LocalDate today) {
        Typed typed = DateBoxes.fill(Typed.NOTHING, "reply-on", today).with(LIMIT + "source", "clinician");
        return DateBoxes.fill(typed, LIMIT + "since", today);
    }

    Parsed<Came> parse(Typed typed, Client client, Stage.Sent sent, String limitId, LocalDate today) {
        Reading reading = new Reading(typed);
        String who = reading.text("reply-who", "who answered", LONGEST_LINE);
        LocalDate on = reading.date("reply-on", "the day of the answer");
        if (on != null) {
            reading.check(!on.isAfter(today), "reply-on", "Check the day: it lies in the future.");
            reading.check(!on.isBefore(sent.on()), "reply-on", "Check the day: the note was sent later than that.");
        }
        Reply.Clearance clearance =
                reading.one("reply-clearance", Reply.Clearance.class, "Choose what the answer says about exercise.");
        reading.need(
                !told(client) || !typed.one("reply-signs").isEmpty(),
                "reply-signs",
                "Say whether the clinician has looked at the signs.");
        String words = reading.optionalText("reply-words", "what it says", LONGEST);
        Optional<Limitation> limit = limit(typed, client, reading.faults(), limitId, today);
        return reading.result(() -> new Came(
                new Reply(on, who, clearance, typed.has("reply-signs", "yes"), words == null ? "" : words, List.of()),
                limit));
    }

    /** Only when one was chosen; what is wrong with it is one of the form's faults. */
    private Optional<Limitation> limit(Typed typed, Client client, Faults faults, String id, LocalDate today) {
        if (typed.one(LIMIT + "what").isEmpty()) {
            return Optional.empty();
        }
        Parsed<Limitation> parsed = limits.parseNew(typed, id, today, client.limitations());
        parsed.faults().all().forEach(fault -> faults.wrong(fault.field(), fault.message()));
        return parsed.value();
    }
}
