package newel.referral;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import newel.People;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Client;
import newel.client.FallsAnswers;
import newel.client.ReadinessAnswers;
import newel.client.RedFlag;
import newel.screen.Screening;
import newel.screen.Urgency;
import newel.source.Finding;
import org.junit.jupiter.api.Test;

class ReferralTest {
    @Test
    void an_unchecked_sign_goes_to_the_own_doctor_and_nothing_goes_on_meanwhile() {
        Note note = note(People.mustBeReferred()).orElseThrow();

        assertEquals(Urgency.ROUTINE, note.urgency());
        assertEquals("Own doctor", note.to());
        assertTrue(note.findings().stream().map(Finding::text).toList().contains("Both ankles swell."));
        assertEquals("No exercise from us until your answer is there.", note.meanwhile());
        assertTrue(note.question().endsWith("?")
                && note.question().indexOf('?') == note.question().length() - 1);
        assertTrue(note.background().stream().anyMatch(line -> line.contains("as told by the client")));
    }

    @Test
    void an_emergency_goes_before_everything_else() {
        Client person = with(People.mustBeReferred(), RedFlag.CHEST_PAIN_NOW, RedFlag.NIGHT_PAIN);

        Note note = note(person).orElseThrow();

        assertEquals(Urgency.EMERGENCY, note.urgency());
        assertEquals("Emergency service: call first, this note goes along", note.to());
    }

    @Test
    void a_high_risk_of_falls_alone_goes_to_the_falls_service_and_seated_work_goes_on() {
        Client fit = People.fitAndBored();
        FallsAnswers falls = new FallsAnswers(3, Answer.YES, Answer.NO, Answer.NO, Answer.NO, Answer.YES, Answer.NO);
        Client fell = new Client(
                fit.id(),
                fit.profile(),
                fit.home(),
                fit.wishes(),
                fit.readiness(),
                falls,
                fit.vitals(),
                fit.measures(),
                fit.limitations());

        Note note = note(fell).orElseThrow();

        assertEquals("Falls service or own doctor", note.to());
        assertEquals(
                "Seated work only, and standing with two hands on a support. No balance work at home.",
                note.meanwhile());
    }

    @Test
    void what_was_not_asked_is_told_as_not_known() {
        Client asked = People.mustBeReferred();
        Client person = new Client(
                asked.id(),
                asked.profile(),
                asked.home(),
                asked.wishes(),
                ReadinessAnswers.notAsked(),
                new FallsAnswers(2, Answer.YES, Answer.YES, Answer.UNKNOWN, Answer.NO, Answer.NO, Answer.NO),
                asked.vitals(),
                asked.measures(),
                List.of());

        assertEquals(
                List.of(
                        "Known illness, as told by the client: not known.",
                        "Regular exercise in the last 3 months, as told: not known.",
                        "Medicine that slows the pulse, as told: not known.",
                        "Falls in the last 12 months, as told: 2, with an injury, lay long or could not get up."),
                note(person).orElseThrow().background());
    }

    @Test
    void who_may_start_needs_no_note() {
        assertEquals(Optional.empty(), note(People.fitAndBored()));
        assertEquals(Optional.empty(), note(People.painfulShoulder()));
    }

    private static Optional<Note> note(Client client) {
        return Referral.of(client, Screening.of(client), People.TODAY);
    }

    private static Client with(Client c, RedFlag... flags) {
        ReadinessAnswers r = c.readiness();
        ReadinessAnswers flagged = new ReadinessAnswers(
                r.regularExercise(),
                r.knownDisease(),
                r.symptoms(),
                Answers.onlyYes(RedFlag.class, flags),
                r.wantsVigorous(),
                r.clearedWithinYear(),
                r.symptomsCleared(),
                r.pulseLoweringMedicine());
        return new Client(
                c.id(),
                c.profile(),
                c.home(),
                c.wishes(),
                flagged,
                c.falls(),
                c.vitals(),
                c.measures(),
                c.limitations());
    }
}
