package newel.handout;

import static newel.Shipped.CATALOGUE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import newel.People;
import newel.Shipped;
import newel.catalogue.Dose;
import newel.catalogue.Reading;
import newel.catalogue.Sides;
import newel.client.Client;
import newel.limit.Share;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandoutsTest {
    @Test
    void everybodys_paper_reads_at_grade_six_or_lower() {
        for (Client person : People.all()) {
            Handout handout = handout(person);
            List<String> lines = new ArrayList<>(handout.stopSigns());
            lines.addAll(handout.cautions());
            handout.parts().forEach(part -> {
                lines.add(part.note());
                part.sheets().forEach(sheet -> {
                    lines.add(sheet.why());
                    lines.addAll(sheet.setUp());
                    lines.addAll(sheet.steps());
                    lines.add(sheet.breathing());
                    lines.add(sheet.stop());
                    lines.add(sheet.range());
                });
            });
            double grade = Reading.of(lines).grade();
            assertTrue(grade <= Reading.MOST, person.profile().name() + ": grade " + grade);
        }
    }

    @Test
    void no_part_of_anybodys_paper_reads_harder_than_grade_six() {
        for (Client person : People.all()) {
            List<Graded> hard =
                    Graded.of(handout(person)).stream().filter(Graded::tooHard).toList();

            assertEquals(List.of(), hard, person.profile().name());
        }
    }

    @Test
    void a_part_that_reads_too_hard_names_its_hardest_line() {
        String hard = "Considerably facilitates independent ambulatory activities.";

        assertEquals(
                new Graded("Walk", Reading.of(List.of("Sit down.", hard)).grade(), hard),
                Graded.graded("Walk", List.of("Sit down.", hard)));
        assertTrue(Graded.graded("Walk", List.of("Sit down.", hard)).tooHard());
        assertEquals("", Graded.graded("Sit", List.of("Sit down.")).hardest());
    }

    @Test
    void a_trimmed_movement_says_how_far_and_is_drawn_so() {
        Sheet trimmed = handout(People.painfulShoulder()).parts().stream()
                .flatMap(part -> part.sheets().stream())
                .filter(sheet -> !sheet.range().isEmpty())
                .findFirst()
                .orElseThrow();

        assertTrue(
                trimmed.range().startsWith("On your right side go only")
                        || trimmed.range().startsWith("Go only"),
                trimmed.range());
        var whole = Shipped.variant("y-raise-seated-edge");
        assertTrue(!Pictures.of(whole).equals(Pictures.of(whole, new Share(1, .5))));
    }

    @Test
    void movements_are_numbered_through_and_each_has_pictures_dose_and_steps() {
        for (Client person : People.all()) {
            List<Sheet> sheets = handout(person).parts().stream()
                    .flatMap(part -> part.sheets().stream())
                    .toList();
            for (int i = 0; i < sheets.size(); i++) {
                Sheet sheet = sheets.get(i);
                assertEquals(i + 1, sheet.number());
                assertTrue(
                        !sheet.picture().frames().isEmpty()
                                && sheet.dose().matches(".*\\d.*")
                                && sheet.steps().size() >= 3,
                        sheet.name());
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "1, 8, 0, TOGETHER, 8 times",
        "1, 8, 0, EACH, 8 times on each side",
        "1, 12, 0, ALTERNATING, '12 in all, changing sides'",
        "2, 1, 25, EACH, '1 time, hold each for 25 seconds on each side, 2 sets'",
        "1, 0, 30, TOGETHER, 30 seconds"
    })
    void a_dose_is_said_in_figures(int sets, int repetitions, int seconds, Sides sides, String words) {
        assertEquals(words, DoseWords.of(new Dose(sets, repetitions, seconds), sides));
    }

    private static Handout handout(Client person) {
        return new Handouts(CATALOGUE).write(person, Shipped.drafted(person));
    }
}
