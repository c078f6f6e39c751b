package newel.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import newel.client.ClientId;
import newel.compose.LeftOut;
import newel.compose.Session;
import newel.program.Origin;
import newel.program.Program;
import newel.program.ProgramId;
import newel.program.Version;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** Programs and their versions, which are only ever added. */
public final class ProgramStore {
    /**
     * The parts of a version that are kept as one text.
     *
     * @param days days of one and the same session; versions of before 26 November 2026 have it, later ones have sessions
     * @param origin none in versions of before 26 November 2026
     */
    private record Content(
            Set<DayOfWeek> days,
            Session session,
            SortedMap<DayOfWeek, Session> sessions,
            List<LeftOut> leftOut,
            Origin origin) {
        Content(Version version) {
            this(null, null, version.sessions(), version.leftOut(), version.origin());
        }

        Origin known() {
            return origin == null ? Origin.UNKNOWN : origin;
        }

        SortedMap<DayOfWeek, Session> week() {
            return sessions == null ? Version.on(days, session) : sessions;
        }
    }

    private final Jdbi jdbi;
    private final Clock clock;

    ProgramStore(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /** Begins a client's program with its first version; a client has one program. */
    public ProgramId begin(ClientId client, Version first) {
        ProgramId id = new ProgramId(Ids.next());
        jdbi.useTransaction(handle -> {
            handle.createUpdate("insert into program (id, client_id, begun_at) values (:id, :client, :now)")
                    .bind("id", id.value())
                    .bind("client", client.value())
                    .bind("now", clock.instant().toString())
                    .execute();
            insert(handle, id, first);
        });
        return id;
    }

    /** Adds the next version. False when somebody else has added one of the same number in the meantime. */
    public boolean add(ProgramId program, Version next) {
        return jdbi.inTransaction(handle -> {
            int newest = handle.createQuery("select max(number) from version where program_id = :program")
                    .bind("program", program.value())
                    .mapTo(Integer.class)
                    .one();
            if (next.number() != newest + 1) {
                return false;
            }
            insert(handle, program, next);
            return true;
        });
    }

    private void insert(Handle handle, ProgramId program, Version version) {
        handle.createUpdate("""
                        insert into version (program_id, number, made_on, reason, content, kept_at)
                        values (:program, :number, :made, :reason, :content, :now)""")
                .bind("program", program.value())
                .bind("number", version.number())
                .bind("made", version.made().toString())
                .bind("reason", version.reason())
                .bind("content", Json.write(new Content(version)))
                .bind("now", clock.instant().toString())
                .execute();
    }

    public Optional<Program> of(ClientId client) {
        return jdbi.withHandle(handle -> handle.createQuery("select id from program where client_id = :client")
                .bind("client", client.value())
                .mapTo(String.class)
                .findOne()
                .map(id -> program(handle, new ProgramId(id), client)));
    }

    public Optional<Program> find(ProgramId id) {
        return jdbi.withHandle(handle -> handle.createQuery("select client_id from program where id = :id")
                .bind("id", id.value())
                .mapTo(String.class)
                .findOne()
                .map(client -> program(handle, id, new ClientId(client))));
    }

    private static Program program(Handle handle, ProgramId id, ClientId client) {
        List<Version> versions = handle.createQuery("select * from version where program_id = :program order by number")
                .bind("program", id.value())
                .map((row, context) -> version(row))
                .list();
        return new Program(id, client, versions);
    }

    private static Version version(ResultSet row) throws SQLException {
        Content content = Json.read(row.getString("content"), Content.class);
        return new Version(
                row.getInt("number"),
                LocalDate.parse(row.getString("made_on")),
                row.getString("reason"),
                content.week(),
                content.leftOut(),
                content.known());
    }
}
