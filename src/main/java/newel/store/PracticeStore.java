package newel.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import newel.assess.Consensus;
import newel.practice.Country;
import newel.practice.Instructor;
import newel.practice.Settings;
import newel.screen.Choices;
import newel.screen.FallsSet;
import newel.screen.PainZones;
import newel.screen.RestSet;
import org.jdbi.v3.core.Jdbi;

/** The settings of the practice. */
public final class PracticeStore {
    private final Jdbi jdbi;
    private final Clock clock;
    /** Asked on every page, changed hardly ever; null until it was read once. */
    private volatile Optional<Settings> kept;

    PracticeStore(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /** Empty until the practice says who it is. */
    public Optional<Settings> settings() {
        Optional<Settings> known = kept;
        if (known == null) {
            known = read();
            kept = known;
        }
        return known;
    }

    private Optional<Settings> read() {
        return jdbi.withHandle(handle -> handle.createQuery("select * from practice")
                .map((row, context) -> settings(row))
                .findOne());
    }

    /** What the practice chose; the strict choices until it has. */
    public Choices choices() {
        return settings().map(Settings::choices).orElseGet(Choices::strict);
    }

    /** The working group that the practice follows; the European one until it has chosen. */
    public Consensus consensus() {
        return settings().map(Settings::consensus).orElse(Consensus.EUROPE);
    }

    public void save(Settings settings) {
        jdbi.useHandle(handle -> handle.createUpdate("""
                        insert into practice
                            (id, name, address, phone, email, country, country_name, emergency_number, instructor_name,
                             instructor_role, qualification, registration, rest_set, falls_set, pain_zones, consensus, changed_at)
                        values
                            ('own', :name, :address, :phone, :email, :country, :countryName, :emergency, :instructor,
                             :role, :qualification, :registration, :rest, :falls, :pain, :consensus, :now)
                        on conflict (id) do update
                        set name = :name, address = :address, phone = :phone, email = :email, country = :country,
                            country_name = :countryName, emergency_number = :emergency, instructor_name = :instructor,
                            instructor_role = :role, qualification = :qualification, registration = :registration,
                            rest_set = :rest, falls_set = :falls, pain_zones = :pain, consensus = :consensus,
                            changed_at = :now""")
                .bindMap(columns(settings))
                .bind("now", clock.instant().toString())
                .execute());
        kept = Optional.of(settings);
    }

    private static Map<String, Object> columns(Settings settings) {
        Map<String, Object> columns = new HashMap<>();
        columns.put("name", settings.name());
        columns.put("address", settings.address());
        columns.put("phone", settings.phone());
        columns.put("email", settings.email());
        columns.put("country", settings.country().code());
        columns.put("countryName", settings.country().name());
        columns.put("emergency", settings.country().emergencyNumber());
        columns.put("instructor", settings.instructor().name());
        columns.put("role", settings.instructor().role());
        columns.put("qualification", settings.instructor().qualification());
        columns.put("registration", settings.instructor().registration());
        columns.put("rest", settings.choices().restSet().name());
        columns.put("falls", settings.choices().fallsSet().name());
        columns.put("pain", settings.choices().painZones().name());
        columns.put("consensus", settings.consensus().name());
        return columns;
    }

    private static Settings settings(ResultSet row) throws SQLException {
        return new Settings(
                row.getString("name"),
                row.getString("address"),
                row.getString("phone"),
                row.getString("email"),
                country(row),
                new Instructor(
                        row.getString("instructor_name"),
                        row.getString("instructor_role"),
                        row.getString("qualification"),
                        row.getString("registration")),
                new Choices(
                        RestSet.valueOf(row.getString("rest_set")),
                        FallsSet.valueOf(row.getString("falls_set")),
                        PainZones.valueOf(row.getString("pain_zones"))),
                Consensus.valueOf(row.getString("consensus")));
    }

    /** A listed country keeps the number that the list has today; any other the one that was typed. */
    private static Country country(ResultSet row) throws SQLException {
        String name = row.getString("country_name");
        String number = row.getString("emergency_number");
        return Country.of(row.getString("country")).orElseGet(() -> Country.other(name, number));
    }
}
