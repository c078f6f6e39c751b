package newel.program;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import newel.People;
import newel.catalogue.Purpose;
import newel.client.Client;
import newel.client.Experience;
import newel.client.Measure;
import newel.client.Measured;
import newel.client.Wishes;
import newel.compose.Level;
import newel.compose.Levels;
import org.junit.jupiter.api.Test;

class BeginningTest {
    @Test
    void without_measures_experience_alone_decides() {
        assertEquals(
                new Beginning(Levels.all(Level.PRACTISED), ""), Beginning.of(person(Experience.SOME), People.TODAY));
    }

    @Test
    void weak_legs_begin_with_the_easy_forms_and_the_arms_stay() {
        Beginning beginning = Beginning.of(
                person(Experience.REGULAR, new Measured(Measure.CHAIR_STAND_30S, 5, People.TODAY)), People.TODAY);

        assertEquals(
                new Beginning(
                        new Levels(Level.REGULAR, Map.of(Purpose.LEGS, Level.BEGINNER, Purpose.HIPS, Level.BEGINNER)),
                        "Easy forms to begin with for the legs, hips, because of the measures."
                                + " 30-second chair stand: below the usual range."),
                beginning);
    }

    @Test
    void strong_arms_begin_one_step_further_and_the_legs_stay() {
        Beginning beginning = Beginning.of(
                person(Experience.NEW, new Measured(Measure.ARM_CURL_30S, 25, People.TODAY)), People.TODAY);

        assertEquals(new Levels(Level.BEGINNER, Map.of(Purpose.ARMS, Level.PRACTISED)), beginning.levels());
        assertEquals(Level.BEGINNER, beginning.levels().of(Purpose.LEGS));
    }

    @Test
    void a_beginner_whose_legs_are_weak_begins_as_beginners_do_and_nothing_is_said() {
        assertEquals(
                new Beginning(Levels.all(Level.BEGINNER), ""),
                Beginning.of(
                        person(Experience.NEW, new Measured(Measure.CHAIR_STAND_30S, 5, People.TODAY)), People.TODAY));
    }

    private static Client person(Experience experience, Measured... measures) {
        Client one = People.painfulShoulder();
        Wishes wishes = one.wishes();
        return new Client(
                one.id(),
                one.profile(),
                one.home(),
                new Wishes(wishes.goals(), wishes.minutes(), wishes.days(), experience),
                one.readiness(),
                one.falls(),
                one.vitals(),
                List.of(measures),
                one.limitations());
    }
}
