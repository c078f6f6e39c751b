package newel.referral;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import newel.People;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Client;
import newel.client.FallsAnswers;
import newel.client.ReadinessAnswers;
import newel.client.RedFlag;
import newel.client.Vitals;
import newel.practice.Country;
import newel.practice.Instructor;
import newel.practice.Settings;
import newel.screen.Choices;
import newel.screen.Screening;
import newel.screen.Urgency;

/** People and notes that tests about referral share. */
final class Notes {
    static final LocalDate TODAY = People.TODAY;
    static final Settings LARKFIELD = new Settings(
            "Larkfield Hall",
            "3 Tannery Row\nLarkfield",
            "0555 014 233",
            "rosa@larkfield.example",
            Country.of("gb").orElseThrow(),
            new Instructor("Rosa Tallis", "exercise instructor", "Level 4", "EX 77"),
            Choices.strict(),
            newel.assess.Consensus.EUROPE);
    static final Consent AGREED =
            new Consent.Given("Gideon Larkspur", "why and what was found", "own doctor", TODAY, Consent.How.SPOKEN);

    static Note note(Urgency urgency, Addressee to, Proposal proposal, List<String> ticked) {
        Draft draft = Draft.of(urgency, to, proposal);
        Draft filled = new Draft(
                draft.urgency(),
                draft.to(),
                "Dr. Ines Halloran",
                draft.reason(),
                ticked,
                draft.question(),
                draft.meanwhile(),
                "");
        return new Note(new NoteId("0192-abc123"), TODAY, filled, AGREED, new Stage.Drafted());
    }

    static Letter letter(Client client, Note note) {
        return Letters.write(note, client.profile(), facts(client), Optional.of(LARKFIELD), TODAY);
    }

    static List<Fact> facts(Client client) {
        return Facts.of(client, Screening.of(client), newel.assess.Guides.shipped());
    }

    static List<String> keys(Client client) {
        return facts(client).stream().map(Fact::key).toList();
    }

    static Client with(Client c, RedFlag... flags) {
        ReadinessAnswers r = c.readiness();
        return with(
                c,
                new ReadinessAnswers(
                        r.regularExercise(),
                        r.knownDisease(),
                        r.symptoms(),
                        Answers.onlyYes(RedFlag.class, flags),
                        r.wantsVigorous(),
                        r.clearedWithinYear(),
                        r.symptomsCleared(),
                        r.pulseLoweringMedicine()),
                c.falls());
    }

    static Client fell(Client c) {
        return with(
                c,
                c.readiness(),
                new FallsAnswers(3, Answer.YES, Answer.NO, Answer.NO, Answer.NO, Answer.YES, Answer.NO));
    }

    /** Somebody fit of whom nothing but the pressure stands out. */
    static Client pressure(int upper, int lower) {
        Client c = People.fitAndBored();
        return new Client(
                c.id(),
                c.profile(),
                c.home(),
                c.wishes(),
                c.readiness(),
                c.falls(),
                Vitals.of(upper, lower, 70),
                c.measures(),
                c.limitations());
    }

    static Client with(Client c, ReadinessAnswers readiness, FallsAnswers falls) {
        return new Client(
                c.id(), c.profile(), c.home(), c.wishes(), readiness, falls, c.vitals(), c.measures(), c.limitations());
    }

    private Notes() {}
}
