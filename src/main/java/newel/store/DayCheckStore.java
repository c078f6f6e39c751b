package newel.store;

import com.fasterxml.jackson.core.type.TypeReference;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import newel.client.ClientId;
import newel.client.DayAnswers;
import newel.screen.Checked;
import newel.screen.Glucose;
import newel.screen.Today;
import newel.source.Finding;
import org.jdbi.v3.core.Jdbi;

/** Checks before a session, kept with the outcome of that day. */
public final class DayCheckStore {
    private static final TypeReference<List<Finding>> FINDINGS = new TypeReference<>() {};

    private final Jdbi jdbi;
    private final Clock clock;

    DayCheckStore(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /** @return its key */
    public String add(ClientId client, LocalDate on, DayAnswers answers, Glucose glucose, Today outcome) {
        String id = Ids.next();
        Map<String, Object> columns = new HashMap<>();
        columns.put("id", id);
        columns.put("client", client.value());
        columns.put("on", on.toString());
        columns.put("answers", Json.write(answers));
        columns.put("glucose", glucose == null ? null : Json.write(glucose));
        columns.put("outcome", name(outcome));
        columns.put("whom", outcome instanceof Today.NotToday not ? not.whom().name() : null);
        columns.put("reasons", Json.write(outcome.reasons(), FINDINGS));
        columns.put("now", clock.instant().toString());
        jdbi.useHandle(handle -> handle.createUpdate("""
                        insert into day_check
                            (id, client_id, done_on, answers, glucose, outcome, whom, reasons, checked_at)
                        values (:id, :client, :on, :answers, :glucose, :outcome, :whom, :reasons, :now)""").bindMap(columns).execute());
        return id;
    }

    /** The newest first. */
    public List<Checked> of(ClientId client) {
        return jdbi.withHandle(handle -> handle.createQuery("""
                        select * from day_check where client_id = :client order by done_on desc, checked_at desc, id desc""")
                .bind("client", client.value())
                .map((row, context) -> checked(row))
                .list());
    }

    /** The last check of that day. */
    public Optional<Checked> on(ClientId client, LocalDate day) {
        return of(client).stream().filter(each -> each.on().equals(day)).findFirst();
    }

    public Optional<Checked> find(ClientId client, String id) {
        return of(client).stream().filter(each -> each.id().equals(id)).findFirst();
    }

    private static Checked checked(ResultSet row) throws SQLException {
        String glucose = row.getString("glucose");
        return new Checked(
                row.getString("id"),
                LocalDate.parse(row.getString("done_on")),
                Json.read(row.getString("answers"), DayAnswers.class),
                glucose == null ? null : Json.read(glucose, Glucose.class),
                outcome(row, Json.read(row.getString("reasons"), FINDINGS)));
    }

    private static String name(Today outcome) {
        return switch (outcome) {
            case Today.Go go -> "go";
            case Today.LightOnly light -> "light-only";
            case Today.NotToday not -> "not-today";
        };
    }

    private static Today outcome(ResultSet row, List<Finding> reasons) throws SQLException {
        return switch (row.getString("outcome")) {
            case "go" -> new Today.Go(reasons);
            case "light-only" -> new Today.LightOnly(reasons);
            default -> new Today.NotToday(Today.Whom.valueOf(row.getString("whom")), reasons);
        };
    }
}
