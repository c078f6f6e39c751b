package newel.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import newel.client.Client;
import newel.client.ClientId;
import newel.client.FallsAnswers;
import newel.client.Home;
import newel.client.Measured;
import newel.client.Profile;
import newel.client.ReadinessAnswers;
import newel.client.Vitals;
import newel.client.Wishes;
import newel.limit.Limitation;
import org.jdbi.v3.core.Jdbi;

/** Clients: opened with a name at intake, whole once intake is finished. */
public final class ClientStore {
    /** @param whole intake was finished once */
    public record Opened(ClientId id, String name, boolean whole, boolean drafted) {}

    private final Jdbi jdbi;
    private final Clock clock;
    private final LimitationStore limitations;
    private final MeasuredStore measured;

    ClientStore(Jdbi jdbi, Clock clock, LimitationStore limitations, MeasuredStore measured) {
        this.jdbi = jdbi;
        this.clock = clock;
        this.limitations = limitations;
        this.measured = measured;
    }

    public ClientId open(String name) {
        ClientId id = new ClientId(Ids.next());
        jdbi.useHandle(handle -> handle.createUpdate("""
                        insert into client (id, name, opened_at, changed_at)
                        values (:id, :name, :now, :now)""")
                .bind("id", id.value())
                .bind("name", name)
                .bind("now", now())
                .execute());
        return id;
    }

    public void rename(ClientId id, String name) {
        jdbi.useHandle(handle -> handle.createUpdate("update client set name = :name, changed_at = :now where id = :id")
                .bind("name", name)
                .bind("now", now())
                .bind("id", id.value())
                .execute());
    }

    /** Keeps all that intake asks. Limitations and measures have rows of their own and are left as they are, and so is who is drawn. */
    public void save(Client client) {
        jdbi.useHandle(handle -> handle.createUpdate("""
                        update client
                        set name = :name, changed_at = :now, profile = :profile, home = :home, wishes = :wishes,
                            readiness = :readiness, falls = :falls, vitals = :vitals
                        where id = :id""")
                .bindMap(columns(client))
                .bind("now", now())
                .execute());
    }

    public void keepReadiness(ClientId id, ReadinessAnswers readiness) {
        jdbi.useHandle(handle -> handle.createUpdate(
                        "update client set readiness = :readiness, changed_at = :now where id = :id")
                .bind("readiness", Json.write(readiness))
                .bind("now", now())
                .bind("id", id.value())
                .execute());
    }

    /** Keeps what was answered about falls, and nothing else. */
    public void keepFalls(ClientId id, FallsAnswers falls) {
        jdbi.useHandle(
                handle -> handle.createUpdate("update client set falls = :falls, changed_at = :now where id = :id")
                        .bind("falls", Json.write(falls))
                        .bind("now", now())
                        .bind("id", id.value())
                        .execute());
    }

    /** A client with everything that is known, in one go. */
    public ClientId add(Client client) {
        ClientId id = open(client.profile().name());
        Client own = new Client(
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
        save(own);
        draw(id, client.look());
        client.measures().forEach(result -> measured.add(id, result));
        client.limitations().forEach(limitation -> limitations.add(id, limitation));
        return id;
    }

    /** Keeps who is drawn, which intake does not ask. */
    public void draw(ClientId id, String look) {
        jdbi.useHandle(handle -> handle.createUpdate("update client set look = :look, changed_at = :now where id = :id")
                .bind("look", look)
                .bind("now", now())
                .bind("id", id.value())
                .execute());
    }

    public List<Opened> all() {
        return jdbi.withHandle(handle ->
                handle.createQuery("""
                        select client.id, name, profile is not null as whole, draft.client_id is not null as drafted
                        from client left join draft on draft.client_id = client.id
                        order by lower(name), client.id""").map((row, context) -> opened(row)).list());
    }

    public Optional<Opened> opened(ClientId id) {
        return jdbi.withHandle(handle -> handle.createQuery("""
                        select client.id, name, profile is not null as whole, draft.client_id is not null as drafted
                        from client left join draft on draft.client_id = client.id
                        where client.id = :id""")
                .bind("id", id.value())
                .map((row, context) -> opened(row))
                .findOne());
    }

    /** The whole client; empty when there is none such or intake was never finished. */
    public Optional<Client> find(ClientId id) {
        return jdbi.withHandle(handle -> {
            List<Measured> measures = measured.of(id);
            return handle.createQuery("select * from client where id = :id and profile is not null")
                    .bind("id", id.value())
                    .map((row, context) -> client(id, row, measures, limitations.of(id)))
                    .findOne();
        });
    }

    /** Takes the client and everything about them out of the file for good. */
    public boolean erase(ClientId id) {
        return jdbi.withHandle(handle -> handle.createUpdate("delete from client where id = :id")
                        .bind("id", id.value())
                        .execute()
                == 1);
    }

    private String now() {
        return clock.instant().toString();
    }

    private static Opened opened(ResultSet row) throws SQLException {
        return new Opened(
                new ClientId(row.getString("id")),
                row.getString("name"),
                row.getBoolean("whole"),
                row.getBoolean("drafted"));
    }

    private static Map<String, Object> columns(Client client) {
        Map<String, Object> columns = new HashMap<>();
        columns.put("id", client.id().value());
        columns.put("name", client.profile().name());
        columns.put("profile", Json.write(client.profile()));
        columns.put("home", Json.write(client.home()));
        columns.put("wishes", Json.write(client.wishes()));
        columns.put("readiness", Json.write(client.readiness()));
        columns.put("falls", Json.write(client.falls()));
        columns.put("vitals", Json.write(client.vitals()));
        return columns;
    }

    private static Client client(ClientId id, ResultSet row, List<Measured> measures, List<Limitation> limitations)
            throws SQLException {
        return new Client(
                id,
                Json.read(row.getString("profile"), Profile.class),
                Json.read(row.getString("home"), Home.class),
                Json.read(row.getString("wishes"), Wishes.class),
                Json.read(row.getString("readiness"), ReadinessAnswers.class),
                Json.read(row.getString("falls"), FallsAnswers.class),
                Json.read(row.getString("vitals"), Vitals.class),
                measures,
                limitations,
                row.getString("look"));
    }
}
