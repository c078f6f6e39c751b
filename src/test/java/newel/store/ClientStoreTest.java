package newel.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import newel.body.Joint;
import newel.body.Motion;
import newel.catalogue.Grip;
import newel.catalogue.Kit;
import newel.catalogue.Position;
import newel.catalogue.Support;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Client;
import newel.client.ClientId;
import newel.client.Contact;
import newel.client.Disease;
import newel.client.Experience;
import newel.client.FallsAnswers;
import newel.client.Goal;
import newel.client.Home;
import newel.client.Measure;
import newel.client.Measured;
import newel.client.Profile;
import newel.client.ReadinessAnswers;
import newel.client.RedFlag;
import newel.client.Sex;
import newel.client.Symptom;
import newel.client.TextSize;
import newel.client.Vitals;
import newel.client.Wishes;
import newel.limit.Avoidance;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.limit.Sided;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClientStoreTest {
    private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-03T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private Database database;
    private Stores stores;

    @BeforeEach
    void open() {
        database = Database.open(folder.resolve("newel.db"));
        stores = Stores.of(database, NOON);
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void a_client_comes_back_as_it_was_saved() {
        ClientId id = stores.clients().add(everythingKnown());

        assertEquals(
                Optional.of(withId(everythingKnown(), id)), stores.clients().find(id));
    }

    @Test
    void a_client_of_whom_little_is_known_comes_back_as_it_was_saved() {
        Client little = littleKnown();
        ClientId id = stores.clients().add(little);

        assertEquals(Optional.of(withId(little, id)), stores.clients().find(id));
    }

    @Test
    void who_is_drawn_is_kept_until_it_is_chosen_anew_whatever_else_is_saved() {
        ClientId id = stores.clients().add(littleKnown());
        assertEquals("", look(id));

        stores.clients().draw(id, "ben");
        stores.clients().save(withId(littleKnown(), id));
        assertEquals("ben", look(id));

        stores.clients().draw(id, "");
        assertEquals("", look(id));
    }

    @Test
    void a_client_outlives_the_closing_of_the_file() {
        ClientId id = stores.clients().add(littleKnown());
        database.close();
        open();

        assertEquals(Optional.of(withId(littleKnown(), id)), stores.clients().find(id));
    }

    @Test
    void a_client_whose_intake_is_not_finished_is_listed_but_not_whole() {
        ClientId id = stores.clients().open("Edda");
        stores.drafts().keep(id, Map.of("name", List.of("Edda")));

        assertEquals(
                List.of(new ClientStore.Opened(id, "Edda", false, true)),
                stores.clients().all());
        assertEquals(Optional.empty(), stores.clients().find(id));
    }

    @Test
    void a_draft_is_kept_as_typed_until_it_is_dropped() {
        ClientId id = stores.clients().open("Edda");
        stores.drafts().keep(id, Map.of("height", List.of("one sixty")));
        stores.drafts().keep(id, Map.of("height", List.of("160"), "kit", List.of("chair", "towel")));

        Optional<Map<String, List<String>>> kept = stores.drafts().find(id);
        stores.drafts().drop(id);

        assertEquals(Optional.of(Map.of("height", List.of("160"), "kit", List.of("chair", "towel"))), kept);
        assertEquals(Optional.empty(), stores.drafts().find(id));
    }

    @Test
    void an_ended_limitation_no_longer_holds_and_can_be_resumed() {
        ClientId id = stores.clients().add(everythingKnown());
        List<Limitation> logged = stores.limitations().of(id);

        assertTrue(stores.limitations().end(id, logged.getFirst().id()));
        assertEquals(List.of(), stores.limitations().of(id));
        assertTrue(stores.limitations().resume(id, logged.getFirst().id()));
        assertEquals(logged, stores.limitations().of(id));
    }

    @Test
    void a_limitation_is_not_ended_by_way_of_another_client() {
        ClientId id = stores.clients().add(everythingKnown());
        ClientId other = stores.clients().open("Edda");

        assertFalse(stores.limitations().end(other, "limitation-1"));
        assertEquals(1, stores.limitations().of(id).size());
    }

    @Test
    void an_erased_client_leaves_no_row_behind() {
        ClientId id = stores.clients().add(everythingKnown());
        stores.drafts().keep(id, Map.of());

        assertTrue(stores.clients().erase(id));

        assertEquals(List.of(0, 0, 0, 0), List.of(rows("client"), rows("draft"), rows("limitation"), rows("measured")));
    }

    private String look(ClientId id) {
        return stores.clients().find(id).orElseThrow().look();
    }

    private int rows(String table) {
        return database.jdbi()
                .withHandle(handle -> handle.createQuery("select count(*) from " + table)
                        .mapTo(Integer.class)
                        .one());
    }

    private static Client withId(Client client, ClientId id) {
        return new Client(
                id,
                client.profile(),
                client.home(),
                client.wishes(),
                client.readiness(),
                client.falls(),
                client.vitals(),
                client.measures(),
                client.limitations(),
                client.look());
    }

    private static Client everythingKnown() {
        return new Client(
                new ClientId("any"),
                new Profile(
                        "Ada O'Neill; drop table client",
                        LocalDate.of(1951, 4, 9),
                        Sex.FEMALE,
                        160,
                        68.5,
                        TextSize.LARGEST,
                        "01 23",
                        new Contact("Jo", "04 56")),
                new Home(Set.of(Kit.CHAIR, Kit.TOWEL), 240, Answer.NO, 1.5),
                new Wishes(
                        List.of(Goal.STAIRS, Goal.POSTURE),
                        25,
                        EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                        Experience.NEW),
                new ReadinessAnswers(
                        Answer.NO,
                        Answers.onlyYes(Disease.class, Disease.DIABETES),
                        Answers.<Symptom>notAsked().with(Symptom.ANKLE_SWELLING, Answer.UNKNOWN),
                        Answers.onlyYes(RedFlag.class),
                        Answer.NO,
                        Answer.YES,
                        Answer.UNKNOWN,
                        Answer.YES),
                new FallsAnswers(2, Answer.YES, Answer.NO, Answer.NO, Answer.UNKNOWN, Answer.YES, Answer.YES),
                new Vitals(128, 78, 72, 97, 36.6, 4, 0.5, Answer.NO),
                List.of(new Measured(Measure.CHAIR_STAND_30S, 9, LocalDate.of(2026, 3, 1), true)),
                List.of(everyKindOfLimit()),
                "cora");
    }

    private static Limitation everyKindOfLimit() {
        return new Limitation(
                "limitation-1",
                "shoulder-pain",
                "It catches when I reach up",
                Sided.RIGHT,
                Limitation.Source.CLIENT,
                LocalDate.of(2026, 3, 1),
                LocalDate.of(2026, 4, 1),
                List.of(
                        new Limit.Angle(Motion.SHOULDER_RAISE, Sided.RIGHT, 80),
                        new Limit.Load(Joint.SHOULDER, Sided.RIGHT, 0.01),
                        new Limit.Positions(Set.of(Position.SEATED_BACK)),
                        new Limit.SupportNeeded(Support.ONE_HAND),
                        new Limit.Time(Limit.Lasting.ARMS_HIGH, 30),
                        new Limit.GripAtMost(Sided.BOTH, Grip.values()[0]),
                        new Limit.NoWristWeight(Sided.LEFT),
                        new Limit.EffortAtMost(4),
                        new Limit.Avoid(Avoidance.IMPACT),
                        new Limit.KitAtHome(Set.of(Kit.CHAIR)),
                        new Limit.Ceiling(1.4, 240, 160),
                        new Limit.ClearSpace(2)),
                List.of("Stop below pain"));
    }

    private static Client littleKnown() {
        return new Client(
                new ClientId("any"),
                new Profile("Bo", LocalDate.of(1948, 1, 1), Sex.MALE, 175, null, TextSize.LARGE, null, null),
                new Home(Set.of(), 250, Answer.UNKNOWN, 0),
                new Wishes(List.of(), 20, Set.of(), Experience.SOME),
                ReadinessAnswers.notAsked(),
                FallsAnswers.notAsked(),
                Vitals.notMeasured(),
                List.of(),
                List.of());
    }
}
