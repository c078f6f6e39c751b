package newel.referral;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import newel.People;
import newel.client.Client;
import newel.client.RedFlag;
import newel.screen.Screening;
import newel.screen.Urgency;
import newel.source.Finding;
import org.junit.jupiter.api.Test;

/** When something has to be handed over, to whom, and how soon. */
class ReferralTest {
    @Test
    void an_unchecked_sign_goes_to_the_own_doctor_and_nothing_goes_on_meanwhile() {
        Proposal proposal = proposal(People.mustBeReferred()).orElseThrow();

        assertEquals(Urgency.ROUTINE, proposal.urgency());
        assertEquals(Addressee.OWN_DOCTOR, proposal.to());
        assertTrue(texts(proposal).contains("Both ankles swell."));
        assertEquals("No exercise from us until your answer is there.", proposal.meanwhile());
        assertEquals("of what was answered when I asked about health before exercise", proposal.reason());
    }

    @Test
    void an_emergency_goes_before_everything_else() {
        Client person = Notes.with(People.mustBeReferred(), RedFlag.CHEST_PAIN_NOW, RedFlag.NIGHT_PAIN);

        Proposal proposal = proposal(person).orElseThrow();

        assertEquals(Urgency.EMERGENCY, proposal.urgency());
        assertEquals(Addressee.EMERGENCY_RECORD, proposal.to());
    }

    @Test
    void a_same_day_sign_goes_to_the_own_doctor() {
        Proposal proposal =
                proposal(Notes.with(People.fitAndBored(), RedFlag.FOOT_ULCER)).orElseThrow();

        assertEquals(Urgency.SAME_DAY, proposal.urgency());
        assertEquals(Addressee.OWN_DOCTOR, proposal.to());
    }

    @Test
    void a_high_risk_of_falls_alone_goes_to_the_falls_service_and_seated_work_goes_on() {
        Proposal proposal = proposal(Notes.fell(People.fitAndBored())).orElseThrow();

        assertEquals(Addressee.FALLS_SERVICE, proposal.to());
        assertEquals(
                "Seated work only, and standing with two hands on a support. No balance work at home.",
                proposal.meanwhile());
    }

    @Test
    void a_weak_or_slow_result_alone_goes_to_a_physiotherapist_and_the_program_goes_on() {
        Proposal proposal =
                proposal(Notes.with(People.fitAndBored(), RedFlag.WEAK_OR_SLOW)).orElseThrow();

        assertEquals(Urgency.ROUTINE, proposal.urgency());
        assertEquals(Addressee.PHYSIOTHERAPIST, proposal.to());
        assertEquals("The program goes on, no harder than moderate.", proposal.meanwhile());
        assertEquals(List.of(RedFlag.WEAK_OR_SLOW.words() + "."), texts(proposal));
    }

    @Test
    void raised_pressure_alone_goes_to_the_own_doctor_and_light_work_goes_on() {
        Proposal proposal = proposal(Notes.pressure(165, 85)).orElseThrow();

        assertEquals(Addressee.OWN_DOCTOR, proposal.to());
        assertEquals("Light work only, without resistance.", proposal.meanwhile());
    }

    @Test
    void every_proposal_asks_one_question() {
        List<Client> people = List.of(
                People.mustBeReferred(),
                Notes.pressure(165, 85),
                Notes.fell(People.fitAndBored()),
                Notes.with(People.fitAndBored(), RedFlag.CHEST_PAIN_NOW),
                Notes.with(People.fitAndBored(), RedFlag.WEAK_OR_SLOW));

        for (Client each : people) {
            Proposal proposal = proposal(each).orElseThrow();
            for (Urgency urgency : Urgency.values()) {
                String question = Draft.of(urgency, proposal.to(), proposal).question();
                assertEquals(question.length() - 1, question.indexOf('?'), question);
            }
        }
    }

    @Test
    void who_may_start_needs_no_note() {
        assertEquals(Optional.empty(), proposal(People.fitAndBored()));
        assertEquals(Optional.empty(), proposal(People.painfulShoulder()));
    }

    private static List<String> texts(Proposal proposal) {
        return proposal.findings().stream().map(Finding::text).toList();
    }

    private static Optional<Proposal> proposal(Client client) {
        return Referral.of(Screening.of(client));
    }
}
