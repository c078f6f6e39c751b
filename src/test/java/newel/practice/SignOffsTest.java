package newel.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.List;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;
import org.junit.jupiter.api.Test;

class SignOffsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 3);
    private static final Statement FEVER = new Statement(
            new Rule("FEVER", "BACR 2006, phase IV instructor manual", Known.SEEN), "At rest", "Hold over 38 °C.");

    @Test
    void what_nobody_signed_needs_a_sign_off() {
        assertEquals(
                "Needs a clinician's sign-off",
                new SignOffs(List.of()).of(FEVER).words());
    }

    @Test
    void a_signed_rule_says_who_signed_it_and_when() {
        SignOffs signed = new SignOffs(List.of(by("Dr. Ines Halloran", FEVER)));

        assertEquals(
                "Signed off by Dr. Ines Halloran, own doctor, 3 March 2026",
                signed.of(FEVER).words());
    }

    @Test
    void a_rule_that_says_something_else_or_rests_on_another_source_needs_a_sign_off_again() {
        SignOffs signed = new SignOffs(List.of(by("Dr. Ines Halloran", FEVER)));
        List<Statement> changed = List.of(
                new Statement(FEVER.rule(), "At rest", "Hold over 37.5 °C."),
                new Statement(new Rule("FEVER", "another manual", Known.SEEN), "At rest", FEVER.says()),
                new Statement(new Rule("FEVER", FEVER.rule().citation(), Known.FROM_MEMORY), "At rest", FEVER.says()));

        for (Statement each : changed) {
            assertEquals(
                    "Changed since Dr. Ines Halloran signed it on 3 March 2026: needs a clinician's sign-off again",
                    signed.of(each).words());
        }
    }

    @Test
    void of_two_who_signed_the_later_one_is_named() {
        SignOffs signed = new SignOffs(List.of(by("Dr. Ines Halloran", FEVER), by("Piet Aldous", FEVER)));

        assertEquals(
                "Signed off by Piet Aldous, own doctor, 3 March 2026",
                signed.of(FEVER).words());
    }

    @Test
    void two_rules_of_one_name_are_not_taken() {
        assertEquals(
                "two rules are called FEVER",
                assertThrows(IllegalArgumentException.class, () -> new Rulebook(List.of(FEVER, FEVER)))
                        .getMessage());
    }

    @Test
    void a_rule_that_the_book_does_not_hold_needs_a_sign_off() {
        SignOffs signed = new SignOffs(List.of(by("Dr. Ines Halloran", FEVER)));
        Rulebook book = new Rulebook(List.of(FEVER));

        assertEquals(new Standing.Signed(signed.all().getFirst()), book.standing(FEVER.rule(), signed));
        assertEquals(new Standing.Needed(), book.standing(new Rule("OTHER", "none", Known.SEEN), signed));
    }

    private static SignOff by(String who, Statement statement) {
        return new SignOff(statement.rule().id(), statement.signed(), who, "own doctor", DAY);
    }
}
