package newel.referral;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import newel.People;
import newel.client.Answer;
import newel.client.Client;
import newel.client.ReadinessAnswers;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.screen.Permission;
import newel.screen.Screening;
import newel.screen.Urgency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days, stages, and what an answer changes. */
class NoteTest {
    private static final LocalDate DAY = Notes.TODAY;

    @ParameterizedTest
    @CsvSource({"EMERGENCY, 0, 1", "SAME_DAY, 0, 1", "ROUTINE, 3, 14"})
    void a_note_is_overdue_on_the_day_after_its_last_day(Urgency urgency, int toSend, int toAnswer) {
        Note drafted = Notes.note(urgency, Addressee.OWN_DOCTOR, Proposal.OWN, List.of());
        Note sent = at(drafted, sent(drafted));

        assertEquals(List.of(false, true), overdue(drafted, toSend));
        assertEquals(List.of(false, true), overdue(sent, toAnswer));
    }

    @Test
    void what_was_answered_dropped_or_refused_is_never_overdue() {
        Note drafted = Notes.note(Urgency.EMERGENCY, Addressee.EMERGENCY_RECORD, Proposal.OWN, List.of());
        Note refused = new Note(drafted.id(), DAY, drafted.draft(), new Consent.Refused(DAY, ""), drafted.stage());

        assertEquals(Optional.empty(), at(drafted, new Stage.Dropped()).due());
        assertEquals(
                Optional.empty(),
                at(drafted, new Stage.Answered(sent(drafted), reply(Reply.Clearance.GIVEN, true)))
                        .due());
        assertEquals(Optional.empty(), refused.due());
        assertEquals(Optional.of(DAY), drafted.due());
    }

    @Test
    void only_a_given_word_or_an_emergency_allows_a_note_to_be_filled() {
        assertEquals(
                List.of(false, true, false, true),
                List.of(
                        new Consent.NotAsked().allows(),
                        Notes.AGREED.allows(),
                        new Consent.Refused(DAY, "").allows(),
                        new Consent.Without(DAY, "not awake").allows()));
    }

    @Test
    void a_clearance_for_signs_that_were_looked_at_lets_exercise_start() {
        Client gideon = People.mustBeReferred();
        assertEquals(Permission.PREPARE, permission(gideon, gideon.readiness()).orElse(null));

        Effect effect = Effect.of(reply(Reply.Clearance.GIVEN, true), gideon.readiness(), "new");

        assertEquals(Answer.YES, effect.readiness().clearedWithinYear());
        assertEquals(Answer.YES, effect.readiness().symptomsCleared());
        assertEquals(DAY, effect.readiness().clearedOn());
        assertEquals(
                List.of(
                        "A clinician's clearance is noted, 3 March 2026.",
                        "The signs that were told have been looked at."),
                effect.lines());
        assertEquals(Optional.empty(), effect.limitation());
        assertEquals(Permission.START, permission(gideon, effect.readiness()).orElse(null));
    }

    @Test
    void a_clearance_that_did_not_look_at_the_signs_leaves_them_waiting() {
        Client gideon = People.mustBeReferred();

        Effect effect = Effect.of(reply(Reply.Clearance.GIVEN, false), gideon.readiness(), "new");

        assertEquals(gideon.readiness().symptomsCleared(), effect.readiness().symptomsCleared());
        assertEquals(
                permission(gideon, gideon.readiness()),
                permission(gideon, effect.readiness()),
                "no easier than before");
    }

    @Test
    void light_to_moderate_only_brings_a_limit_on_effort_ordered_by_a_clinician() {
        Effect effect = Effect.of(
                reply(Reply.Clearance.UP_TO_MODERATE, true),
                People.mustBeReferred().readiness(),
                "new");

        Limitation limit = effect.limitation().orElseThrow();
        assertEquals(List.of(new Limit.EffortAtMost(6)), limit.limits());
        assertEquals(Limitation.Source.CLINICIAN, limit.source());
        assertEquals(Answer.YES, effect.readiness().clearedWithinYear());
    }

    @Test
    void no_clearance_takes_an_earlier_one_back() {
        ReadinessAnswers cleared = Effect.of(
                        reply(Reply.Clearance.GIVEN, true),
                        People.mustBeReferred().readiness(),
                        "new")
                .readiness();

        ReadinessAnswers after = Effect.of(reply(Reply.Clearance.NOT_GIVEN, true), cleared, "new")
                .readiness();

        assertEquals(Answer.NO, after.clearedWithinYear());
        assertEquals(Answer.NO, after.symptomsCleared());
        assertEquals(null, after.clearedOn());
    }

    @Test
    void an_answer_that_does_not_say_changes_nothing() {
        ReadinessAnswers before = People.mustBeReferred().readiness();

        Effect effect = Effect.of(reply(Reply.Clearance.NOT_SAID, true), before, "new");

        assertEquals(before, effect.readiness());
        assertEquals(List.of("Nothing changes: the answer does not say whether exercise may go on."), effect.lines());
    }

    @Test
    void no_answer_takes_back_a_red_flag() {
        Client flagged = Notes.with(People.fitAndBored(), newel.client.RedFlag.ONE_LEG_SWELLING);

        Effect effect = Effect.of(reply(Reply.Clearance.GIVEN, true), flagged.readiness(), "new");

        assertEquals(flagged.readiness().redFlags(), effect.readiness().redFlags());
        assertEquals(Optional.of(Permission.NOTHING), permission(flagged, effect.readiness()));
    }

    private static Optional<Permission> permission(Client client, ReadinessAnswers readiness) {
        return Optional.of(
                Screening.of(Notes.with(client, readiness, client.falls())).permission());
    }

    private static List<Boolean> overdue(Note note, int days) {
        return List.of(note.overdue(DAY.plusDays(days)), note.overdue(DAY.plusDays(days + 1)));
    }

    private static Note at(Note note, Stage stage) {
        return new Note(note.id(), note.opened(), note.draft(), note.consent(), stage);
    }

    private static Stage.Sent sent(Note note) {
        Client gideon = People.mustBeReferred();
        Letter letter = Notes.letter(gideon, note);
        return new Stage.Sent(
                DAY,
                Stage.Way.POST,
                letter,
                ClientCopy.of(note.draft(), letter, gideon.profile(), Optional.of(Notes.LARKFIELD)));
    }

    private static Reply reply(Reply.Clearance clearance, boolean signsSeen) {
        return new Reply(DAY, "Dr. Ines Halloran", clearance, signsSeen, "", List.of());
    }
}
