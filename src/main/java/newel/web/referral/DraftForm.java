package newel.web.referral;

import java.util.List;
import newel.referral.Draft;
import newel.referral.Fact;
import newel.referral.Note;
import newel.screen.Urgency;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Typed;

/** What goes into a note. */
final class DraftForm {
    static final String FACTS = "facts";
    private static final int LONGEST_LINE = 80;
    private static final int LONGEST = 300;

    static List<Ask> before(Asking ask) {
        return List.of(
                ask.line("draft-reader", "Name of the reader")
                        .hint("A person, or a surgery.")
                        .maybe(),
                ask.words("draft-reason", "I ask for advice because …")
                        .hint("One reason, in your words. Say what was seen or told, and name no disease."));
    }

    static List<Ask> after(Asking ask, Draft draft) {
        Ask question = ask.words("draft-question", "My question").hint("One question, with one question mark.");
        Ask meanwhile = ask.words("draft-meanwhile", "What goes on until the answer");
        Ask phoned = ask.line("draft-phoned", "Also told by phone")
                .hint("Whom you called, on which day and at what time.")
                .maybe();
        return draft.urgency() == Urgency.ROUTINE ? List.of(question, meanwhile) : List.of(question, meanwhile, phoned);
    }

    static Typed fill(Draft draft) {
        return Typed.NOTHING
                .with("draft-reader", draft.reader())
                .with("draft-reason", draft.reason())
                .with(FACTS, draft.ticked())
                .with("draft-question", draft.question())
                .with("draft-meanwhile", draft.meanwhile())
                .with("draft-phoned", draft.phoned());
    }

    static Parsed<Draft> parse(Typed typed, Note note, List<Fact> facts) {
        Reading reading = new Reading(typed);
        reading.check(
                note.consent().allows(),
                "consent-said",
                "Ask the client first: nothing goes into the note before they have agreed.");
        String reader = plain(reading.optionalText("draft-reader", "the name of the reader", LONGEST_LINE));
        String reason = reading.text("draft-reason", "the reason", LONGEST);
        String question = reading.text("draft-question", "the question", LONGEST);
        reading.check(
                question == null || question.isEmpty() || one(question),
                "draft-question",
                "Ask one question, and end it with a question mark.");
        String meanwhile = reading.text("draft-meanwhile", "what goes on until the answer", LONGEST);
        String phoned = plain(reading.optionalText("draft-phoned", "whom you called", LONGEST_LINE));
        List<String> ticked = facts.stream()
                .map(Fact::key)
                .filter(key -> typed.has(FACTS, key))
                .toList();
        Draft draft = note.draft();
        return reading.result(() ->
                new Draft(draft.urgency(), draft.to(), reader, unstopped(reason), ticked, question, meanwhile, phoned));
    }

    private static boolean one(String question) {
        return question.chars().filter(each -> each == '?').count() == 1;
    }

    /** The sentence that it goes into ends by itself. */
    private static String unstopped(String reason) {
        return reason.replaceFirst("\\.$", "");
    }

    private static String plain(String text) {
        return text == null ? "" : text;
    }

    private DraftForm() {}
}
