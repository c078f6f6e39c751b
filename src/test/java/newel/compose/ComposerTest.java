package newel.compose;

import static newel.Shipped.CATALOGUE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import newel.People;
import newel.Shipped;
import newel.catalogue.Kind;
import newel.catalogue.Trait;
import newel.client.Client;
import newel.client.Wishes;
import newel.limit.Limitation;
import newel.limit.Preset;
import newel.limit.Sided;
import newel.program.Version;
import newel.screen.Screening;
import org.junit.jupiter.api.Test;

class ComposerTest {
    private static final Timing TIMING = new Timing(CATALOGUE);
    private static final long SEED = 20260303;

    @Test
    void a_session_stays_within_its_minutes_and_uses_at_least_nine_tenths_of_them() {
        each((person, minutes, session) -> {
            int seconds = TIMING.session(session);
            assertTrue(seconds <= minutes * 60, person + ", " + minutes + " min: " + seconds + " s");
            if (minutes >= 15 && minutes <= 45) {
                assertTrue(seconds >= .9 * minutes * 60, person + ", " + minutes + " min: only " + seconds + " s");
            }
        });
    }

    @Test
    void from_twenty_five_minutes_on_rounds_of_three_or_four_are_gone_through_twice() {
        each((person, minutes, session) -> {
            List<Block> rounds = session.blocks().stream()
                    .filter(block -> block.kind() == BlockKind.ROUND)
                    .toList();
            if (minutes >= 25) {
                assertTrue(
                        rounds.size() >= 1 && rounds.size() <= 4,
                        person + ", " + minutes + ": " + rounds.size() + " rounds");
                rounds.forEach(round -> assertEquals(2, round.passes(), person + ", " + minutes));
                rounds.forEach(round -> assertTrue(round.items().size() <= 4, person));
            }
        });
    }

    @Test
    void nobody_is_sent_to_the_floor_by_a_draft() {
        each((person, minutes, session) -> session.items()
                .forEach(item -> assertFalse(
                        Shipped.variant(item.variant()).traits().contains(Trait.FLOOR_TRANSFER)
                                || item.movement().equals("floor-transfer"),
                        person + ", " + minutes)));
    }

    @Test
    void warm_up_first_balance_while_fresh_cool_down_last_and_each_movement_once() {
        each((person, minutes, session) -> {
            List<BlockKind> kinds = session.blocks().stream().map(Block::kind).toList();
            List<BlockKind> ordered = new ArrayList<>(kinds);
            ordered.sort(null);
            assertEquals(ordered, kinds, person);
            assertEquals(BlockKind.WARM_UP, kinds.getFirst(), person);
            assertEquals(BlockKind.COOL_DOWN, kinds.getLast(), person);
            List<String> movements = session.items().map(Item::movement).toList();
            assertEquals(new HashSet<>(movements).size(), movements.size(), person + " " + movements);
        });
    }

    @Test
    void even_ten_minutes_are_kept_when_every_larger_size_is_too_long() {
        Client person = People.fitAndBored();
        for (String preset : List.of("prolapse", "vertebral-fracture", "hip-replacement-anterior")) {
            person = with(person, preset, Sided.BOTH);
        }

        int seconds = TIMING.session(draft(person, 10).firstSession());

        assertTrue(seconds <= 600, seconds + " s");
    }

    @Test
    void with_more_limitations_it_still_fits_the_person_and_the_minutes() {
        Random random = new Random(SEED);
        List<Preset> presets = Shipped.PRESETS.all();
        for (Client one : People.all()) {
            for (int set = 0; set < 1; set++) {
                Client person = one;
                for (int more = 1 + random.nextInt(3); more > 0; more--) {
                    String preset = presets.get(random.nextInt(presets.size())).id();
                    person = with(person, preset, Sided.values()[random.nextInt(3)]);
                }
                for (int minutes : List.of(10, 25, 60)) {
                    soundFor(person, minutes);
                }
            }
        }
    }

    private static void soundFor(Client person, int minutes) {
        String who = "seed %d: %s with %s, %d min"
                .formatted(
                        SEED,
                        person.profile().name(),
                        person.limitations().stream()
                                .map(each -> each.preset() + " " + each.side())
                                .toList(),
                        minutes);
        Session session = draft(person, minutes).firstSession();
        int seconds = TIMING.session(session);
        boolean allKinds = Screening.of(person).withheld().isEmpty();
        Suiting suiting = Shipped.suiting(person);

        assertTrue(seconds <= minutes * 60, who + ": " + seconds + " s");
        if (allKinds && minutes >= 15 && minutes <= 45) {
            assertTrue(seconds >= .9 * minutes * 60, who + ": only " + seconds + " s");
        }
        session.items()
                .forEach(item -> assertEquals(
                        List.of(), suiting.broken(Shipped.variant(item.variant()), item.share(), item.dose()), who));
        List<String> movements = session.items().map(Item::movement).toList();
        assertEquals(new HashSet<>(movements).size(), movements.size(), who);
        assertEquals(BlockKind.COOL_DOWN, session.blocks().getLast().kind(), who);
    }

    private static Client with(Client c, String preset, Sided side) {
        List<Limitation> all = new ArrayList<>(c.limitations());
        all.add(Shipped.PRESETS
                .find(preset)
                .orElseThrow()
                .limitation("more-" + all.size(), "", side, Limitation.Source.CLIENT, People.TODAY, null));
        return new Client(
                c.id(), c.profile(), c.home(), c.wishes(), c.readiness(), c.falls(), c.vitals(), c.measures(), all);
    }

    @Test
    void everything_in_it_fits_this_person() {
        for (Client person : People.all()) {
            Suiting suiting = Shipped.suiting(person);
            draft(person, 25)
                    .firstSession()
                    .items()
                    .forEach(item -> assertEquals(
                            List.of(),
                            suiting.broken(Shipped.variant(item.variant()), item.share(), item.dose()),
                            person.profile().name() + ": " + item.variant()));
        }
    }

    @Test
    void what_was_left_out_is_named_with_its_reasons() {
        Version draft = draft(People.cannotStand(), 25);

        assertTrue(!draft.leftOut().isEmpty());
        draft.leftOut().forEach(out -> {
            assertTrue(CATALOGUE.movement(out.movement()).isPresent(), out.movement());
            assertTrue(!out.reasons().isEmpty(), out.movement());
            assertTrue(draft.firstSession().item(out.movement()).isEmpty(), out.movement());
        });
    }

    @Test
    void the_fit_and_bored_client_gets_more_than_the_beginner() {
        int fit = effort(draft(People.fitAndBored(), 40));
        int beginner = effort(draft(People.painfulShoulder(), 40));

        assertTrue(fit > beginner, fit + " against " + beginner);
    }

    @Test
    void while_the_blood_pressure_allows_light_work_only_there_is_no_strength_work() {
        Client person = People.mustBeReferred();
        assertTrue(Screening.of(person).withheld().containsKey(Kind.STRENGTH));

        Version draft = draft(person, 25);

        draft.firstSession()
                .items()
                .forEach(item -> assertTrue(
                        CATALOGUE.movement(item.movement()).orElseThrow().kind() != Kind.STRENGTH, item.movement()));
        assertTrue(draft.leftOut().stream()
                .anyMatch(out -> out.reasons()
                        .equals(List.of("Strength work waits until a doctor has seen the blood pressure."))));
    }

    private static int effort(Version version) {
        return version.firstSession()
                .items()
                .mapToInt(item -> Shipped.variant(item.variant()).effort())
                .max()
                .orElse(0);
    }

    private interface Check {
        void of(String person, int minutes, Session session);
    }

    private record Drafted(String person, int minutes, Session session) {}

    /** Composed once for all tests that look at them. */
    private static final List<Drafted> DRAFTED = drafted();

    private static List<Drafted> drafted() {
        List<Drafted> drafted = new ArrayList<>();
        for (Client person : free()) {
            for (int minutes : List.of(10, 15, 25, 40, 60)) {
                drafted.add(new Drafted(
                        person.profile().name(), minutes, draft(person, minutes).firstSession()));
            }
        }
        return drafted;
    }

    private static void each(Check check) {
        DRAFTED.forEach(each -> check.of(each.person(), each.minutes(), each.session()));
    }

    /** All but those for whom screening holds back whole kinds of movement. */
    private static List<Client> free() {
        return People.all().stream()
                .filter(each -> Screening.of(each).withheld().isEmpty())
                .toList();
    }

    private static Version draft(Client c, int minutes) {
        Wishes wishes = new Wishes(
                c.wishes().goals(), minutes, c.wishes().days(), c.wishes().experience());
        Client wishing = new Client(
                c.id(),
                c.profile(),
                c.home(),
                wishes,
                c.readiness(),
                c.falls(),
                c.vitals(),
                c.measures(),
                c.limitations());
        return Shipped.drafted(wishing);
    }
}
