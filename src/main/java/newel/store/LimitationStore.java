package newel.store;

import com.fasterxml.jackson.core.type.TypeReference;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import newel.client.ClientId;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.limit.Sided;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** What was logged about each client. */
public final class LimitationStore {
    private static final TypeReference<List<Limit>> LIMITS = new TypeReference<>() {};
    private static final TypeReference<List<String>> LINES = new TypeReference<>() {};

    private final Jdbi jdbi;
    private final Clock clock;

    LimitationStore(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /** Logs it under its own id, which {@link Ids#next()} makes. */
    public void add(ClientId client, Limitation limitation) {
        jdbi.useHandle(handle -> insert(handle, client, limitation));
    }

    void insert(Handle handle, ClientId client, Limitation limitation) {
        handle.createUpdate("""
                        insert into limitation
                            (id, client_id, preset, words, side, source, since, review, limits, cautions, logged_at)
                        values
                            (:id, :client, :preset, :words, :side, :source, :since, :review, :limits, :cautions, :now)""")
                .bindMap(columns(limitation))
                .bind("client", client.value())
                .bind("now", clock.instant().toString())
                .execute();
    }

    private static Map<String, Object> columns(Limitation limitation) {
        Map<String, Object> columns = new java.util.HashMap<>();
        columns.put("id", limitation.id());
        columns.put("preset", limitation.preset());
        columns.put("words", limitation.words());
        columns.put("side", limitation.side().name());
        columns.put("source", limitation.source().name());
        columns.put("since", limitation.since().toString());
        columns.put(
                "review",
                limitation.review() == null ? null : limitation.review().toString());
        columns.put("limits", Json.write(limitation.limits(), LIMITS));
        columns.put("cautions", Json.write(limitation.cautions()));
        return columns;
    }

    /** Those that hold, in the order they were logged. */
    public List<Limitation> of(ClientId client) {
        return jdbi.withHandle(handle -> handle.createQuery("""
                        select * from limitation
                        where client_id = :client and ended_at is null
                        order by logged_at, id""")
                .bind("client", client.value())
                .map((row, context) -> limitation(row))
                .list());
    }

    public Optional<Limitation> find(ClientId client, String id) {
        return jdbi.withHandle(
                handle -> handle.createQuery("select * from limitation where client_id = :client and id = :id")
                        .bind("client", client.value())
                        .bind("id", id)
                        .map((row, context) -> limitation(row))
                        .findOne());
    }

    /** Other limits for the same limitation; what they were and why they changed is kept. */
    public void change(ClientId client, Limitation before, List<Limit> after, String reason) {
        jdbi.useTransaction(handle -> {
            handle.createUpdate("update limitation set limits = :limits where client_id = :client and id = :id")
                    .bind("limits", Json.write(after, LIMITS))
                    .bind("client", client.value())
                    .bind("id", before.id())
                    .execute();
            handle.createUpdate("""
                            insert into limitation_change (id, limitation_id, before, after, reason, changed_at)
                            values (:id, :limitation, :before, :after, :reason, :now)""")
                    .bind("id", Ids.next())
                    .bind("limitation", before.id())
                    .bind("before", Json.write(before.limits(), LIMITS))
                    .bind("after", Json.write(after, LIMITS))
                    .bind("reason", reason)
                    .bind("now", clock.instant().toString())
                    .execute();
        });
    }

    /** Reasons for changes of a limitation's limits, oldest first; changes without a reason are left out. */
    public List<String> reasons(String limitation) {
        return jdbi.withHandle(handle -> handle.createQuery("""
                        select reason from limitation_change
                        where limitation_id = :limitation and reason <> ''
                        order by changed_at, id""")
                .bind("limitation", limitation)
                .mapTo(String.class)
                .list());
    }

    /** It no longer holds. False when there is none such. */
    public boolean end(ClientId client, String id) {
        return mark(client, id, clock.instant().toString());
    }

    /** It holds after all. */
    public boolean resume(ClientId client, String id) {
        return mark(client, id, null);
    }

    private boolean mark(ClientId client, String id, String endedAt) {
        return jdbi.withHandle(handle ->
                handle.createUpdate("update limitation set ended_at = :ended where client_id = :client and id = :id")
                                .bind("ended", endedAt)
                                .bind("client", client.value())
                                .bind("id", id)
                                .execute()
                        == 1);
    }

    private static Limitation limitation(ResultSet row) throws SQLException {
        String review = row.getString("review");
        return new Limitation(
                row.getString("id"),
                row.getString("preset"),
                row.getString("words"),
                Sided.valueOf(row.getString("side")),
                Limitation.Source.valueOf(row.getString("source")),
                LocalDate.parse(row.getString("since")),
                review == null ? null : LocalDate.parse(review),
                Json.read(row.getString("limits"), LIMITS),
                Json.read(row.getString("cautions"), LINES));
    }
}
