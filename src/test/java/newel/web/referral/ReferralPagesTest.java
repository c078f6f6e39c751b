package newel.web.referral;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import newel.People;
import newel.casefile.Demo;
import newel.client.Answer;
import newel.client.Client;
import newel.client.ClientId;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.referral.Addressee;
import newel.referral.ClientCopy;
import newel.referral.Consent;
import newel.referral.Draft;
import newel.referral.Letter;
import newel.referral.Note;
import newel.referral.NoteId;
import newel.referral.Proposal;
import newel.referral.Stage;
import newel.screen.Urgency;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Running;
import newel.web.Served;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A note from its opening to its answer. */
class ReferralPagesTest extends Served {
    private static final String SWELLING = "Both ankles swell.";

    private ClientId id;
    private String client;

    @BeforeEach
    void start() {
        running.stores.practice().save(Demo.settings());
        id = Cast.add(running.stores, People.mustBeReferred());
        client = "/clients/" + id.value();
    }

    @Test
    void what_screening_asks_for_is_proposed_and_chosen_already() {
        Browser.Page page = browser.get(client + "/referrals");

        assertEquals("Somebody else must look at this", page.text("#waits"));
        assertTrue(page.texts(".because li").contains(SWELLING));
        assertEquals(
                "routine", page.html().select("[name=note-urgency][checked]").attr("value"));
        assertEquals("own-doctor", page.html().select("[name=note-to][checked]").attr("value"));
        assertTrue(page.texts(".sources .standing").contains("Needs a clinician's sign-off"));
    }

    @Test
    void a_new_note_is_drafted_asks_for_consent_and_offers_nothing_to_tick() {
        Browser.Page note = begin("routine", "own-doctor");

        assertTrue(note.text("main").contains("Drafted, not sent."));
        assertEquals("1. Ask the client", note.text("#consent"));
        assertEquals(0, note.html().select("[name=facts]").size());
        assertEquals(0, note.html().select("#send").size());
        assertFalse(note.text(".letter-text").contains(SWELLING));
    }

    @Test
    void nothing_goes_in_and_nothing_goes_out_before_the_client_was_asked() {
        Browser.Page note = begin("routine", "own-doctor");

        Browser.Page filled =
                post(note, "/draft", "draft-reason=x&draft-question=Y%3F&draft-meanwhile=z&facts=told-falls");
        Browser.Page sent = post(note, "/sending", "send-way=post&send-on-day=3&send-on-month=3&send-on-year=2026");

        assertEquals(422, filled.status());
        assertEquals(
                List.of("Ask the client first: nothing goes into the note before they have agreed."),
                filled.texts(".errors li"));
        assertEquals(422, sent.status());
        assertEquals(
                List.of("Ask the client first: a note is sent only when they have agreed."), sent.texts(".errors li"));
        assertEquals(new Stage.Drafted(), kept().stage());
        assertEquals(List.of(), kept().draft().ticked());
    }

    @Test
    void a_client_who_agrees_is_written_down_with_who_what_with_whom_when_and_how() {
        Browser.Page agreed = agree(begin("routine", "own-doctor"));

        assertEquals(
                new Consent.Given(
                        "Gideon Larkspur",
                        "the reason for this note and what is found in it",
                        "own doctor",
                        People.TODAY,
                        Consent.How.SPOKEN),
                kept().consent());
        assertTrue(agreed.html().select("[name=facts]").size() > 8);
        assertEquals(0, agreed.html().select("[name=facts][checked]").size(), "nothing is ticked at first");
    }

    @Test
    void a_client_who_refuses_is_written_down_and_the_note_stays_unsent() {
        Browser.Page refused = browser.press(
                begin("routine", "own-doctor"),
                "Keep the client's word",
                Map.of("consent-said", "refuses", "consent-words", "I tell her myself"));

        assertEquals(new Consent.Refused(People.TODAY, "I tell her myself"), kept().consent());
        assertEquals(0, refused.html().select("[name=facts]").size());
        assertEquals(0, refused.html().select("#send").size());
        assertTrue(refused.text("main").contains("The client refused; not sent"));
        assertEquals(
                422,
                post(refused, "/sending", "send-way=post&send-on-day=3&send-on-month=3&send-on-year=2026")
                        .status());
        assertEquals(0, browser.get(client).html().select("#notes").size(), "nothing is left to do about it");
    }

    @Test
    void only_an_emergency_is_recorded_without_consent_and_only_with_its_reason() {
        Browser.Page routine = begin("routine", "own-doctor");
        assertEquals(
                0, routine.html().select("[name=consent-said][value=not-asked]").size());
        assertEquals(
                List.of("Ask first: only an emergency is recorded without the client's word."),
                browser.press(
                                routine,
                                "Keep the client's word",
                                Map.of("consent-said", "not-asked", "consent-words", "No time"))
                        .texts(".errors li"));

        Browser.Page emergency = begin("emergency", "emergency-record");
        assertEquals(
                List.of("Type why the client could not be asked."),
                browser.press(emergency, "Keep the client's word", Map.of("consent-said", "not-asked"))
                        .texts(".errors li"));
        Browser.Page recorded = browser.press(
                emergency,
                "Keep the client's word",
                Map.of("consent-said", "not-asked", "consent-words", "He could not speak"));

        assertEquals(new Consent.Without(People.TODAY, "He could not speak"), kept().consent());
        assertTrue(recorded.text(".letter-text")
                .contains("Shared without consent on 3 March 2026 because of an emergency: He could not speak"));
        Browser.Page sent = browser.press(recorded, "Keep it as sent", Map.of("send-way", "in-person"));
        assertTrue(sent.text("main").contains("Sent 3 March 2026, not answered."));
    }

    @Test
    void an_emergency_shows_the_number_of_the_country_before_anything_else() {
        Browser.Page note = begin("emergency", "emergency-record");

        assertEquals("Call 999 now", note.text(".call-number"));
        assertTrue(note.html().body().text().indexOf("Call 999 now")
                < note.html().body().text().indexOf("Referral note,"));
    }

    @Test
    void an_emergency_record_goes_to_nobody_else_and_nothing_else_is_one() {
        Browser.Page page = browser.get(client + "/referrals");

        for (Map<String, String> typed : List.of(
                Map.of("note-urgency", "emergency", "note-to", "own-doctor"),
                Map.of("note-urgency", "routine", "note-to", "emergency-record"))) {
            Browser.Page refused = browser.press(page, "Begin the note", typed);
            assertEquals(422, refused.status());
            assertEquals(
                    List.of("A record for the emergency service goes with an emergency, and with nothing else."),
                    refused.texts(".errors li"));
        }
    }

    @Test
    void only_what_is_ticked_stands_in_the_letter() {
        Browser.Page agreed = agree(begin("routine", "own-doctor"));
        String falls = "Falls in the last 12 months, as told: 1.";
        assertTrue(agreed.texts("label.option").contains(SWELLING)
                && agreed.texts("label.option").contains(falls));

        Browser.Page filled = fill(agreed, key(agreed, SWELLING));

        assertEquals(List.of(SWELLING), filled.texts(".letter-text li"));
        Browser.Page letter = browser.get(filled.path() + "/letter");
        assertEquals(List.of(SWELLING), letter.texts("main li"));
        assertFalse(letter.text("main").contains(falls));
        assertTrue(letter.text("main").contains("Draft, not sent"));
    }

    @Test
    void the_letter_says_what_was_found_and_not_by_which_rule() {
        Browser.Page note = filledNote();

        assertTrue(note.text(".sources").contains("Riebe et al. 2015"));
        String letter = browser.get(note.path() + "/letter").text("main");
        assertFalse(letter.contains("Riebe"));
        assertTrue(letter.contains("We screen by published rules and do not diagnose."));
        assertEquals(1, letter.chars().filter(each -> each == '?').count());
    }

    @Test
    void a_note_asks_one_question() {
        Browser.Page agreed = agree(begin("routine", "own-doctor"));

        for (String question : List.of("Is it safe? And how long?", "Is it safe")) {
            Browser.Page refused = browser.press(agreed, "Keep and see the letter", Map.of("draft-question", question));
            assertEquals(422, refused.status());
            assertEquals(List.of("Ask one question, and end it with a question mark."), refused.texts(".errors li"));
            assertEquals(question, refused.html().select("#draft-question").text());
        }
    }

    @Test
    void words_that_name_a_disease_are_pointed_out_before_sending() {
        Browser.Page filled = browser.press(
                agree(begin("routine", "own-doctor")),
                "Keep and see the letter",
                Map.of("draft-reason", "I think it is arthritis"));

        assertTrue(filled.texts(".letter-preview .box")
                .contains("“arthritis” names a disease. Write what you saw, or who named it."));
    }

    @Test
    void what_went_out_is_kept_word_for_word_whatever_changes_later() {
        Browser.Page sent = send(filledNote());
        String words = browser.get(sent.path() + "/letter").text("main");
        Stage.Sent before = kept().sent().orElseThrow();

        running.stores.practice().save(Demo.settings());
        running.stores.clients().rename(id, "Somebody Else");
        Browser.Page again = post(sent, "/draft", "draft-reason=x&draft-question=Y%3F&draft-meanwhile=z");

        assertEquals(404, again.status());
        assertFalse(running.stores.referrals().change(kept().id(), kept().draft(), kept().consent()));
        assertFalse(running.stores.referrals().send(kept().id(), before));
        assertEquals(before, kept().sent().orElseThrow());
        assertEquals(words, browser.get(sent.path() + "/letter").text("main"));
    }

    @Test
    void a_sent_note_waits_for_its_answer_on_the_clients_page_and_in_the_list() {
        send(filledNote());

        assertEquals(
                List.of("Own doctor, 3 March 2026 Sent 3 March 2026, not answered. Answer due 17 March 2026"),
                browser.get(client).texts(".note-lines li"));
        assertTrue(browser.get("/clients").texts(".needs .tag").contains("Referral note not answered"));
    }

    @Test
    void an_overdue_note_stands_out_on_the_clients_page_and_in_the_list() {
        NoteId overdue = sentOn(LocalDate.of(2026, 2, 16));

        assertEquals(
                List.of("Overdue: Answer due 2 March 2026"), browser.get(client).texts(".note-lines .tag.stop"));
        assertTrue(browser.get("/clients").texts(".needs .tag.stop").contains("Referral note overdue, not answered"));
        assertEquals(
                "Overdue: Answer due 2 March 2026",
                browser.get(client + "/referrals/" + overdue.value()).text("main > p .tag"));
    }

    @Test
    void on_its_last_day_a_note_is_not_overdue() {
        sentOn(LocalDate.of(2026, 2, 17));

        assertEquals(List.of(), browser.get(client).texts(".note-lines .tag.stop"));
    }

    @Test
    void a_clearance_lets_exercise_start_and_is_written_down() {
        Browser.Page sent = send(filledNote());
        assertEquals("Waits for a doctor or another clinician", sent.text(".client-header .state"));

        Browser.Page answered = answer(sent, "given", Map.of("reply-signs", "yes"));

        assertTrue(answered.text("main").contains("Answered 3 March 2026."));
        assertEquals(
                List.of(
                        "A clinician's clearance is noted, 3 March 2026.",
                        "The signs that were told have been looked at."),
                answered.texts("#reply ~ ul li"));
        assertTrue(answered.text(".client-header .state").startsWith("May start"));
        Client after = running.stores.clients().find(id).orElseThrow();
        assertEquals(Answer.YES, after.readiness().clearedWithinYear());
        assertEquals(Answer.YES, after.readiness().symptomsCleared());
        assertEquals(People.TODAY, after.readiness().clearedOn());
        assertTrue(answered.text("#history ~ ul").contains("Answered by Dr. Ines Halloran."));
        assertEquals(0, browser.get(client).html().select("#notes").size());
    }

    @Test
    void an_answer_that_says_no_lets_nothing_start() {
        Browser.Page answered = answer(send(filledNote()), "not-given", Map.of("reply-signs", "yes"));

        assertEquals(
                Answer.NO,
                running.stores.clients().find(id).orElseThrow().readiness().clearedWithinYear());
        assertEquals("Waits for a doctor or another clinician", answered.text(".client-header .state"));
        assertTrue(answered.text("main").contains("Exercise still waits."));
    }

    @Test
    void an_answer_may_bring_limits_that_are_logged_as_a_clinicians_order() {
        Map<String, String> limit = new HashMap<>(Map.of(
                "reply-signs", "yes",
                "limit-what", "shoulder-pain",
                "limit-side", "right",
                "limit-words", "No lifting above the shoulder"));

        Browser.Page answered = answer(send(filledNote()), "up-to-moderate", limit);

        List<Limitation> logged = running.stores.limitations().of(id);
        assertEquals(
                List.of(Limitation.Source.CLINICIAN, Limitation.Source.CLINICIAN),
                logged.stream().map(Limitation::source).toList());
        assertTrue(logged.stream().anyMatch(each -> each.limits().equals(List.of(new Limit.EffortAtMost(6)))));
        assertTrue(logged.stream().anyMatch(each -> each.preset().equals("shoulder-pain")));
        assertTrue(answered.texts("#reply ~ ul li")
                .contains("Logged: Shoulder pain, right side (“No lifting above the shoulder”)."));
        assertTrue(answered.text(".client-header").contains("Shoulder pain, right side"));
    }

    @Test
    void an_answer_without_who_or_what_is_refused_and_what_was_typed_stays() {
        Browser.Page sent = send(filledNote());

        Browser.Page refused = browser.press(
                sent,
                "Keep the answer",
                Map.of("reply-words", "Fine by me", "reply-on-day", "2", "limit-what", "shoulder-pain"));

        assertEquals(422, refused.status());
        assertEquals(
                List.of(
                        "Type who answered.",
                        "Check the day: the note was sent later than that.",
                        "Choose what the answer says about exercise.",
                        "Say whether the clinician has looked at the signs.",
                        "Choose the side, or both."),
                refused.texts(".errors li"));
        assertEquals("Fine by me", refused.html().select("#reply-words").text());
        assertTrue(refused.html().select(".limit-form").hasAttr("open"));
        assertTrue(kept().stage() instanceof Stage.Sent);
    }

    @Test
    void an_intake_that_is_being_gone_through_again_keeps_the_clearance() {
        running.stores.drafts().keep(id, Map.of("readiness-cleared", List.of("no"), "person-name", List.of("Gideon")));

        answer(send(filledNote()), "given", Map.of("reply-signs", "yes"));

        Map<String, List<String>> draft = running.stores.drafts().find(id).orElseThrow();
        assertEquals(List.of("yes"), draft.get("readiness-cleared"));
        assertEquals(List.of("yes"), draft.get("readiness-signs-cleared"));
        assertEquals(List.of("Gideon"), draft.get("person-name"));
    }

    @Test
    void a_note_that_is_not_sent_can_be_dropped_and_taken_up_again() {
        Browser.Page dropped =
                browser.press(begin("routine", "own-doctor"), "Drop this note without sending it", Map.of());

        assertEquals("The note is dropped.", dropped.text(".note p"));
        assertEquals(new Stage.Dropped(), kept().stage());
        assertEquals(0, browser.get(client).html().select("#notes").size());
        browser.press(dropped, "Undo", Map.of());
        assertEquals(new Stage.Drafted(), kept().stage());
    }

    @Test
    void every_step_leaves_a_line() {
        Browser.Page answered = answer(send(filledNote()), "given", Map.of("reply-signs", "yes"));

        List<String> lines = answered.texts("#history ~ ul li").stream()
                .map(line -> line.substring(line.indexOf(": ") + 2))
                .toList();
        assertEquals(
                List.of(
                        "Begun.",
                        "Consent: Gideon Larkspur agreed on 3 March 2026, by word of mouth, that this is shared with own"
                                + " doctor: the reason for this note and what is found in it.",
                        "Sent by post to Own doctor.",
                        "Answered by Dr. Ines Halloran. A clinician's clearance is noted, 3 March 2026. The signs that were"
                                + " told have been looked at."),
                lines);
    }

    @Test
    void without_settings_the_letter_says_so_and_the_instructor_is_told() {
        try (Running bare = new Running(folder.resolve("bare").toFile().mkdirs() ? folder.resolve("bare") : folder)) {
            ClientId other = Cast.add(bare.stores, People.mustBeReferred());
            NoteId note = bare.stores
                    .referrals()
                    .open(other, Draft.of(Urgency.EMERGENCY, Addressee.EMERGENCY_RECORD, Proposal.OWN), People.TODAY);
            String path = "/clients/" + other.value() + "/referrals/" + note.value();

            Browser.Page page = bare.browser().get(path);

            assertEquals("Call an ambulance now", page.text(".call-number"));
            assertTrue(page.texts(".letter-preview .box")
                    .contains("The letter does not say how to reach you: set your practice's name and phone first."));
            assertTrue(bare.browser()
                    .get(path + "/letter")
                    .text("main")
                    .contains("We have not written down how to reach us yet. Please give your answer to the client."));
        }
    }

    @Test
    void the_clients_copy_is_kept_as_it_went_out() {
        Browser.Page sent = send(filledNote());

        Browser.Page copy = browser.get(sent.path() + "/copy");

        assertEquals("Your copy, Gideon Larkspur", copy.text("h1"));
        assertEquals(List.of(SWELLING), copy.texts("main li"));
        assertTrue(copy.text("nav").contains("This is the client's copy as it went out."));
    }

    @Test
    void what_is_typed_is_shown_as_text_and_never_as_markup() {
        Browser.Page agreed = agree(begin("routine", "own-doctor"));

        Browser.Page filled =
                browser.press(agreed, "Keep and see the letter", Map.of("draft-reason", "<b onclick=x>he fell</b>"));

        assertTrue(filled.text(".letter-text").contains("because <b onclick=x>he fell</b>."));
        assertEquals(0, filled.html().select("[onclick]").size());
    }

    @Test
    void a_note_of_another_client_is_not_found() {
        Browser.Page note = begin("routine", "own-doctor");
        ClientId other = Cast.add(running.stores, People.fitAndBored());

        assertEquals(
                404,
                browser.get("/clients/" + other.value() + "/referrals/"
                                + kept().id().value())
                        .status());
        assertEquals(200, note.status());
    }

    @Test
    void a_client_who_asks_gets_everything_kept_with_their_notes_and_nobody_elses() {
        send(filledNote());
        ClientId other = Cast.add(running.stores, People.fitAndBored());

        Browser.Page export = browser.get(client + "/export.json");

        String file = export.response().body();
        assertEquals("attachment; filename=\"client.json\"", export.header("content-disposition"));
        assertTrue(file.contains(SWELLING) && file.contains("Request for advice") && file.contains("Sent by post"));
        assertFalse(file.contains(other.value()) || file.contains("Casimir"));
        assertEquals(404, browser.get("/clients/none/export.json").status());
    }

    @Test
    void erasing_the_client_erases_their_notes() {
        send(filledNote());
        assertEquals(List.of(1, 1, 0), rows());

        answer(browser.get(client + "/referrals/" + kept().id().value()), "given", Map.of("reply-signs", "yes"));
        assertEquals(List.of(1, 1, 1), rows());
        running.stores.clients().erase(id);

        assertEquals(List.of(0, 0, 0), rows());
    }

    private List<Integer> rows() {
        return List.of("referral", "referral_sent", "referral_reply").stream()
                .map(table -> running.database
                        .jdbi()
                        .withHandle(handle -> handle.createQuery("select count(*) from " + table)
                                .mapTo(Integer.class)
                                .one()))
                .toList();
    }

    private Browser.Page begin(String urgency, String to) {
        return browser.press(
                browser.get(client + "/referrals"), "Begin the note", Map.of("note-urgency", urgency, "note-to", to));
    }

    private Browser.Page agree(Browser.Page note) {
        return browser.press(note, "Keep the client's word", Map.of("consent-said", "agrees"));
    }

    private Browser.Page fill(Browser.Page note, String... facts) {
        return browser.press(note, "Keep and see the letter", Map.of("facts", List.of(facts)));
    }

    private Browser.Page filledNote() {
        Browser.Page agreed = agree(begin("routine", "own-doctor"));
        return fill(agreed, key(agreed, SWELLING));
    }

    private Browser.Page send(Browser.Page note) {
        return browser.press(note, "Keep it as sent", Map.of("send-way", "post"));
    }

    private Browser.Page answer(Browser.Page sent, String clearance, Map<String, String> more) {
        Map<String, String> typed = new HashMap<>(more);
        typed.put("reply-who", "Dr. Ines Halloran");
        typed.put("reply-clearance", clearance);
        return browser.press(sent, "Keep the answer", typed);
    }

    /** A routine note that went out on an earlier day. */
    private NoteId sentOn(LocalDate day) {
        Draft draft = Draft.of(Urgency.ROUTINE, Addressee.OWN_DOCTOR, Proposal.OWN);
        NoteId note = running.stores.referrals().open(id, draft, day);
        Letter letter = new Letter(
                "Request for advice",
                "",
                "",
                "",
                "",
                List.of(),
                "",
                List.of(),
                "",
                List.of(),
                List.of(),
                "",
                "",
                "",
                "",
                "",
                "");
        running.stores
                .referrals()
                .send(note, new Stage.Sent(day, Stage.Way.POST, letter, new ClientCopy("", List.of(), List.of(), "")));
        return note;
    }

    private Browser.Page post(Browser.Page note, String act, String body) {
        String token = note.html().select("[name=_token]").attr("value");
        return browser.post(note.path() + act, "_token=" + token + "&" + body);
    }

    private Note kept() {
        return running.stores.referrals().of(id).getFirst();
    }

    private static String key(Browser.Page page, String text) {
        return page.html().select("label.option").stream()
                .filter(each -> each.text().equals(text))
                .findFirst()
                .orElseThrow()
                .attr("for");
    }
}
