package newel.store;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import newel.client.ClientId;
import org.jdbi.v3.core.Jdbi;

/** Lines about changes that somebody may have to account for, never changed once written. */
public final class AuditStore {
    public record Line(Instant at, String what) {
        private static final DateTimeFormatter MINUTE =
                DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.ENGLISH);

        /** With its day and minute, in the time of this machine. */
        public String dated() {
            return MINUTE.format(at.atZone(ZoneId.systemDefault())) + ": " + what;
        }
    }

    private final Jdbi jdbi;
    private final Clock clock;

    AuditStore(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /** About the practice itself. */
    public void write(String subject, String what) {
        insert(null, subject, what);
    }

    /** @param subject what was changed: the key of a note or a limitation, or the name of a part */
    public void write(ClientId client, String subject, String what) {
        insert(client.value(), subject, what);
    }

    private void insert(String client, String subject, String what) {
        jdbi.useHandle(handle -> handle.createUpdate("""
                        insert into audit (id, client_id, subject, what, at)
                        values (:id, :client, :subject, :what, :now)""")
                .bind("id", Ids.next())
                .bind("client", client)
                .bind("subject", subject)
                .bind("what", what)
                .bind("now", clock.instant().toString())
                .execute());
    }

    /** Everything about one client, oldest first. */
    public List<Line> of(ClientId client) {
        return jdbi.withHandle(handle -> handle.createQuery(
                        "select * from audit where client_id = :client order by at, id")
                .bind("client", client.value())
                .map((row, context) -> new Line(Instant.parse(row.getString("at")), row.getString("what")))
                .list());
    }

    /** Oldest first. */
    public List<Line> of(String subject) {
        return jdbi.withHandle(handle -> handle.createQuery(
                        "select * from audit where subject = :subject order by at, id")
                .bind("subject", subject)
                .map((row, context) -> new Line(Instant.parse(row.getString("at")), row.getString("what")))
                .list());
    }
}
