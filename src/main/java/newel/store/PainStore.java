package newel.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import newel.client.ClientId;
import newel.screen.PainLog;
import newel.screen.PainLogged;
import newel.screen.PainOutcome;
import newel.screen.Urgency;
import newel.source.Finding;
import org.jdbi.v3.core.Jdbi;

/** Pain of sessions, each with what it said. */
public final class PainStore {
    private final Jdbi jdbi;
    private final Clock clock;

    PainStore(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    public void add(ClientId client, LocalDate on, String where, PainLog log, PainOutcome outcome) {
        Map<String, Object> columns = columns(log, outcome);
        columns.put("id", Ids.next());
        columns.put("client", client.value());
        columns.put("on", on.toString());
        columns.put("place", where);
        columns.put("now", clock.instant().toString());
        jdbi.useHandle(handle -> handle.createUpdate("""
                        insert into pain_log
                            (id, client_id, done_on, place, log, outcome, urgency, finding, logged_at)
                        values (:id, :client, :on, :place, :log, :outcome, :urgency, :finding, :now)""").bindMap(columns).execute());
    }

    /** The same session with the next morning told, and what that says. */
    public void tell(String id, PainLog log, PainOutcome outcome) {
        Map<String, Object> columns = columns(log, outcome);
        columns.put("id", id);
        jdbi.useHandle(handle -> handle.createUpdate("""
                        update pain_log set log = :log, outcome = :outcome, urgency = :urgency, finding = :finding
                        where id = :id""").bindMap(columns).execute());
    }

    /** The newest first. */
    public List<PainLogged> of(ClientId client) {
        return jdbi.withHandle(handle -> handle.createQuery("""
                        select * from pain_log where client_id = :client order by done_on desc, logged_at desc, id desc""")
                .bind("client", client.value())
                .map((row, context) -> logged(row))
                .list());
    }

    public Optional<PainLogged> find(ClientId client, String id) {
        return of(client).stream().filter(each -> each.id().equals(id)).findFirst();
    }

    private static Map<String, Object> columns(PainLog log, PainOutcome outcome) {
        Map<String, Object> columns = new HashMap<>();
        columns.put("log", Json.write(log));
        columns.put("outcome", name(outcome));
        columns.put(
                "urgency",
                outcome instanceof PainOutcome.NotForThisModel not
                        ? not.urgency().name()
                        : null);
        columns.put("finding", Json.write(outcome.finding()));
        return columns;
    }

    private static PainLogged logged(ResultSet row) throws SQLException {
        return new PainLogged(
                row.getString("id"),
                LocalDate.parse(row.getString("done_on")),
                row.getString("place"),
                Json.read(row.getString("log"), PainLog.class),
                outcome(row, Json.read(row.getString("finding"), Finding.class)));
    }

    private static String name(PainOutcome outcome) {
        return switch (outcome) {
            case PainOutcome.Progress progress -> "progress";
            case PainOutcome.Keep keep -> "keep";
            case PainOutcome.AskNextMorning ask -> "ask-next-morning";
            case PainOutcome.Reduce reduce -> "reduce";
            case PainOutcome.StopAndRefer stop -> "stop-and-refer";
            case PainOutcome.NotForThisModel not -> "not-for-this-model";
        };
    }

    private static PainOutcome outcome(ResultSet row, Finding finding) throws SQLException {
        return switch (row.getString("outcome")) {
            case "progress" -> new PainOutcome.Progress(finding);
            case "keep" -> new PainOutcome.Keep(finding);
            case "ask-next-morning" -> new PainOutcome.AskNextMorning(finding);
            case "reduce" -> new PainOutcome.Reduce(finding);
            case "not-for-this-model" ->
                new PainOutcome.NotForThisModel(finding, Urgency.valueOf(row.getString("urgency")));
            default -> new PainOutcome.StopAndRefer(finding);
        };
    }
}
