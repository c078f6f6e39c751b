package newel.store;

import com.fasterxml.jackson.core.type.TypeReference;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import newel.body.Side;
import newel.client.Aid;
import newel.client.ClientId;
import newel.client.Done;
import newel.client.Measure;
import newel.client.Measured;
import newel.client.Part;
import newel.client.Quantity;
import newel.client.Unit;
import org.jdbi.v3.core.Jdbi;

/**
 * Results of tests. A number is kept as a double and read back as the shortest decimal that names it, which is the one that
 * was typed: a form takes far fewer than the 15 digits up to which this holds.
 */
public final class MeasuredStore {
    private static final TypeReference<Map<Part, BigDecimal>> PARTS = new TypeReference<>() {};

    /** A result with its key. */
    public record Kept(String id, Measured measured) {}

    private final Jdbi jdbi;
    private final Clock clock;

    MeasuredStore(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /** @return its key */
    public String add(ClientId client, Measured result) {
        String id = Ids.next();
        jdbi.useHandle(handle -> handle.createUpdate("""
                        insert into measured (id, client_id, measure, value, unit, done_on, arms_used, unable, side, aid, parts)
                        values (:id, :client, :measure, :value, :unit, :on, :arms, :unable, :side, :aid, :parts)""")
                .bind("id", id)
                .bind("client", client.value())
                .bind("measure", result.measure().name())
                .bind("value", result.result().amount().doubleValue())
                .bind("unit", result.result().unit().name())
                .bind("on", result.on().toString())
                .bind("arms", result.armsUsed() ? 1 : 0)
                .bind("unable", result.unable() ? 1 : 0)
                .bind(
                        "side",
                        result.done().side() == null ? "" : result.done().side().name())
                .bind("aid", result.done().aid().name())
                .bind("parts", Json.write(result.parts()))
                .execute());
        return id;
    }

    /** The oldest first; of one day, in the order they were entered. */
    public List<Kept> kept(ClientId client) {
        return jdbi.withHandle(handle -> handle.createQuery("""
                        select * from measured
                        where client_id = :client and taken_back_at is null
                        order by done_on, id""")
                .bind("client", client.value())
                .map((row, context) -> kept(row))
                .list());
    }

    List<Measured> of(ClientId client) {
        return kept(client).stream().map(Kept::measured).toList();
    }

    public boolean takeBack(ClientId client, String id) {
        return mark(client, id, clock.instant().toString());
    }

    public boolean giveBack(ClientId client, String id) {
        return mark(client, id, null);
    }

    private boolean mark(ClientId client, String id, String when) {
        return jdbi.withHandle(handle ->
                handle.createUpdate("update measured set taken_back_at = :when where id = :id and client_id = :client")
                                .bind("when", when)
                                .bind("id", id)
                                .bind("client", client.value())
                                .execute()
                        == 1);
    }

    private static Kept kept(ResultSet row) throws SQLException {
        Measure measure = Measure.valueOf(row.getString("measure"));
        String unit = row.getString("unit");
        String side = row.getString("side");
        return new Kept(
                row.getString("id"),
                new Measured(
                        measure,
                        Quantity.of(row.getDouble("value"), unit.isEmpty() ? measure.unit() : Unit.valueOf(unit)),
                        LocalDate.parse(row.getString("done_on")),
                        new Done(
                                row.getInt("unable") == 1,
                                row.getInt("arms_used") == 1,
                                side.isEmpty() ? null : Side.valueOf(side),
                                Aid.valueOf(row.getString("aid"))),
                        Json.read(row.getString("parts"), PARTS)));
    }
}
