package newel.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import newel.People;
import newel.Shipped;
import newel.client.Client;
import newel.client.ClientId;
import newel.program.Origin;
import newel.program.Program;
import newel.program.ProgramId;
import newel.program.Version;
import newel.web.Cast;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgramStoreTest {
    @TempDir
    Path folder;

    private Database database;
    private Stores stores;
    private ClientId id;

    @BeforeEach
    void open() {
        database = Database.open(folder.resolve("newel.db"));
        stores = Stores.of(database, Clock.fixed(Instant.parse("2026-03-03T12:00:00Z"), ZoneOffset.UTC));
        id = Cast.add(stores, People.kneesAndPressure());
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void a_version_comes_back_as_it_was_kept() {
        Version first = first();
        ProgramId program = stores.programs().begin(id, first);
        Version second = first.next(People.TODAY, "Moved something.", first.sessions());
        assertTrue(stores.programs().add(program, second));

        Program read = stores.programs().find(program).orElseThrow();

        assertEquals(new Program(program, id, List.of(first, second)), read);
        assertEquals(Optional.of(read), stores.programs().of(id));
    }

    @Test
    void a_version_kept_when_all_days_were_one_session_still_reads() {
        Version first = first();
        ProgramId program = stores.programs().begin(id, first);
        String before =
                Json.write(Map.of("days", first.days(), "session", first.firstSession(), "leftOut", first.leftOut()));
        database.jdbi().useHandle(handle -> handle.execute("update version set content = ?", before));

        assertEquals(
                new Version(
                        first.number(),
                        first.made(),
                        first.reason(),
                        first.sessions(),
                        first.leftOut(),
                        Origin.UNKNOWN),
                stores.programs().find(program).orElseThrow().newest());
    }

    @Test
    void of_two_changes_to_one_version_only_the_first_is_kept() {
        Version first = first();
        ProgramId program = stores.programs().begin(id, first);
        Version mine = first.next(People.TODAY, "Mine.", first.sessions());
        Version theirs = first.next(People.TODAY, "Theirs.", first.sessions());

        assertTrue(stores.programs().add(program, mine));
        assertFalse(stores.programs().add(program, theirs));

        assertEquals(
                List.of(first, mine),
                stores.programs().find(program).orElseThrow().versions());
    }

    @Test
    void a_limitation_by_every_preset_comes_back_as_it_was_logged() {
        Shipped.PRESETS.all().forEach(preset -> {
            var logged = preset.limitation(
                    Ids.next(), "", newel.limit.Sided.LEFT, newel.limit.Limitation.Source.CLIENT, People.TODAY, null);
            stores.limitations().add(id, logged);
            assertEquals(Optional.of(logged), stores.limitations().find(id, logged.id()), preset.id());
        });
    }

    @Test
    void erasing_a_client_takes_program_and_links_along() {
        ProgramId program = stores.programs().begin(id, first());
        String token = stores.links().make(program);
        assertEquals(Optional.of(program), stores.links().opens(token));

        stores.clients().erase(id);

        assertEquals(Optional.empty(), stores.programs().find(program));
        assertEquals(Optional.empty(), stores.links().opens(token));
    }

    @Test
    void tokens_differ_and_open_their_own_program_only() {
        ClientId other = Cast.add(stores, People.fitAndBored());
        Client kept = stores.clients().find(other).orElseThrow();
        ProgramId one = stores.programs().begin(id, first());
        ProgramId two = stores.programs().begin(other, Shipped.drafted(kept));
        String first = stores.links().make(one);
        String second = stores.links().make(two);

        stores.links().withdraw(one);

        assertFalse(first.equals(second));
        assertEquals(Optional.empty(), stores.links().opens(first));
        assertEquals(Optional.of(two), stores.links().opens(second));
    }

    private Version first() {
        Client client = stores.clients().find(id).orElseThrow();
        return Shipped.drafted(client);
    }
}
