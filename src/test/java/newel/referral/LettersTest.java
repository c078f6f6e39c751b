package newel.referral;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import newel.People;
import newel.catalogue.Reading;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Client;
import newel.client.FallsAnswers;
import newel.client.ReadinessAnswers;
import newel.client.RedFlag;
import newel.client.Symptom;
import newel.screen.Screening;
import newel.screen.Urgency;
import org.junit.jupiter.api.Test;

/** What a letter says, and what it leaves out. */
class LettersTest {
    private static final Client GIDEON = People.mustBeReferred();

    @Test
    void before_anything_is_ticked_a_letter_says_who_and_why_and_nothing_else() {
        Letter letter = Notes.letter(GIDEON, note(List.of()));

        assertEquals(List.of(), letter.needs());
        assertEquals(List.of(), letter.background());
        assertEquals(List.of(), letter.findings());
        assertEquals("Gideon Larkspur, born 12 December 1955, 70 years old", letter.about());
        assertEquals(
                "I am Rosa Tallis, exercise instructor. I guide this person's exercise at home and ask for your advice"
                        + " because of what was answered when I asked about health before exercise.",
                letter.situation());
    }

    @Test
    void only_what_is_ticked_goes_in() {
        List<Fact> offered = Notes.facts(GIDEON);
        Fact swelling = offered.stream()
                .filter(each -> each.text().equals("Both ankles swell."))
                .findFirst()
                .orElseThrow();

        Letter letter = Notes.letter(GIDEON, note(List.of(swelling.key())));

        assertEquals(List.of("Both ankles swell."), letter.findings());
        String all = String.join("\n", letter.lines());
        assertTrue(offered.size() > 8);
        for (Fact each : offered) {
            assertEquals(each.equals(swelling), all.contains(each.text()), each.text());
        }
    }

    @Test
    void a_letter_stands_in_the_order_situation_background_findings_question() {
        Letter letter = Notes.letter(GIDEON, note(Notes.keys(GIDEON)));

        List<String> lines = letter.lines();
        int situation = lines.indexOf(letter.situation());
        int background = lines.indexOf(letter.background().getFirst());
        int findings = lines.indexOf(letter.findings().getFirst());
        int question = lines.indexOf(letter.question());
        assertTrue(situation < background && background < findings && findings < question);
    }

    @Test
    void a_measure_stands_with_its_unit_day_norm_and_whose_norm_it_is() {
        Client person = People.painfulShoulder();

        List<String> measured = Notes.facts(person).stream()
                .filter(each -> each.key().equals("measured-chair-stand-30s"))
                .map(Fact::text)
                .toList();

        assertEquals(
                List.of(
                        "30-second chair stand: 11 stands, 20 February 2026: within the usual range (10 to 15, 25th to 75th"
                                + " centile; Rikli RE, Jones CJ 1999, J Aging Phys Act 7:162-181); under the standard for staying"
                                + " independent (under 14; Rikli RE, Jones CJ 2013, Gerontologist 53:255-267)."),
                measured);
    }

    @Test
    void what_was_not_asked_is_told_as_not_known() {
        Client person = Notes.with(
                GIDEON,
                ReadinessAnswers.notAsked(),
                new FallsAnswers(2, Answer.YES, Answer.YES, Answer.UNKNOWN, Answer.NO, Answer.NO, Answer.NO));

        assertEquals(
                List.of(
                        "Not every question about known illness is answered.",
                        "Regular exercise in the last 3 months, as told: not known.",
                        "Medicine that slows the pulse, as told: not known.",
                        "Falls in the last 12 months, as told: 2, with an injury, lay long or could not get up."),
                Notes.facts(person).stream()
                        .filter(each -> each.part() == Fact.Part.TOLD)
                        .map(Fact::text)
                        .toList());
    }

    @Test
    void the_reader_is_told_how_to_reach_the_practice_and_until_when() {
        assertEquals(
                "Please answer by 17 March 2026: phone 0555 014 233 or email rosa@larkfield.example.",
                Notes.letter(GIDEON, note(List.of())).reply());
    }

    @Test
    void a_practice_without_a_phone_number_says_so_instead_of_leaving_a_blank() {
        Letter letter =
                Letters.write(note(List.of()), GIDEON.profile(), Notes.facts(GIDEON), Optional.empty(), Notes.TODAY);

        assertEquals(
                "We have not written down how to reach us yet. Please give your answer to the client.", letter.reply());
        assertEquals("An exercise instructor", letter.sender());
        assertFalse(String.join(" ", letter.lines()).contains("null"));
    }

    @Test
    void a_letter_says_who_agreed_to_what_when_and_how() {
        assertEquals(
                "Gideon Larkspur agreed on 3 March 2026, by word of mouth, that this is shared with own doctor: why and"
                        + " what was found.",
                Notes.letter(GIDEON, note(List.of())).consent());
    }

    @Test
    void the_own_words_of_notes_name_no_disease() {
        List<String> own = new ArrayList<>();
        for (Urgency urgency : Urgency.values()) {
            for (Addressee to : Addressee.values()) {
                for (Client person : List.of(GIDEON, Notes.fell(GIDEON), Notes.pressure(165, 85))) {
                    Proposal proposal = Referral.of(Screening.of(person)).orElse(Proposal.OWN);
                    Note note = Notes.note(urgency, to, proposal, List.of());
                    own.addAll(Notes.letter(person, note).lines());
                    own.addAll(copy(person, note).words());
                }
            }
        }
        People.all()
                .forEach(person -> Notes.facts(person).stream()
                        .filter(each -> each.part() == Fact.Part.FOUND || each.part() == Fact.Part.MEASURED)
                        .forEach(each -> own.add(each.text())));
        for (RedFlag flag : RedFlag.values()) {
            own.add(flag.words());
        }
        for (Symptom sign : Symptom.values()) {
            own.add(sign.words());
        }

        assertTrue(own.size() > 200);
        assertEquals(List.of("arthritis", "fracture"), DiagnosticWords.in("Looks like arthritis after a fracture."));
        own.forEach(line -> assertEquals(List.of(), DiagnosticWords.in(line), line));
    }

    @Test
    void the_clients_copy_reads_at_grade_six_or_lower_whatever_is_in_it() {
        for (Urgency urgency : Urgency.values()) {
            for (Addressee to : Addressee.values()) {
                ClientCopy copy = copy(GIDEON, Notes.note(urgency, to, Proposal.OWN, List.of()));
                List<String> words = new ArrayList<>(copy.words());
                words.add(copy.call());
                double grade = Reading.of(words).grade();
                assertTrue(grade <= Reading.MOST, urgency + " " + to + " reads at " + grade);
            }
        }
    }

    @Test
    void the_clients_copy_tells_the_client_what_was_said_about_them() {
        ClientCopy copy = copy(GIDEON, note(Notes.keys(GIDEON)));

        assertEquals("We wrote to your doctor on 3 March 2026.", copy.words().getFirst());
        assertTrue(copy.said().contains("Diabetes, type 1 or 2, as you told us."));
        assertTrue(copy.said().contains("Both ankles swell."));
        assertEquals("To ask us, call 0555 014 233.", copy.call());
    }

    @Test
    void a_letter_that_is_longer_than_a_page_says_so() {
        List<Fact> many = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            many.add(new Fact("fact-" + i, Fact.Part.FOUND, "One more thing that was found, number " + i + "."));
        }
        List<String> keys = many.stream().map(Fact::key).toList();

        Letter all = Letters.write(note(keys), GIDEON.profile(), many, Optional.of(Notes.LARKFIELD), Notes.TODAY);
        Letter some = Letters.write(
                note(keys.subList(0, 10)), GIDEON.profile(), many, Optional.of(Notes.LARKFIELD), Notes.TODAY);

        assertEquals(List.of(false, true), List.of(all.fitsOnePage(), some.fitsOnePage()));
    }

    @Test
    void every_urgent_sign_that_was_told_can_be_ticked() {
        Client person = Notes.with(
                GIDEON,
                new ReadinessAnswers(
                        Answer.NO,
                        Answers.notAsked(),
                        Answers.onlyYes(Symptom.class, Symptom.values()),
                        Answers.onlyYes(RedFlag.class, RedFlag.values()),
                        Answer.NO,
                        Answer.NO,
                        Answer.NO,
                        Answer.NO),
                GIDEON.falls());
        List<String> texts = Notes.facts(person).stream().map(Fact::text).toList();

        for (RedFlag flag : RedFlag.values()) {
            if (flag.code().startsWith("E") || flag.code().startsWith("D")) {
                assertTrue(texts.contains(flag.words() + "."), flag.words());
            }
        }
        assertEquals(texts.size(), Notes.keys(person).stream().distinct().count());
    }

    private static ClientCopy copy(Client client, Note note) {
        return ClientCopy.of(note.draft(), Notes.letter(client, note), client.profile(), Optional.of(Notes.LARKFIELD));
    }

    private static Note note(List<String> ticked) {
        return Notes.note(
                Urgency.ROUTINE,
                Addressee.OWN_DOCTOR,
                Referral.of(Screening.of(GIDEON)).orElseThrow(),
                ticked);
    }
}
