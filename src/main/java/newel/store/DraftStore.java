package newel.store;

import com.fasterxml.jackson.core.type.TypeReference;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import newel.client.ClientId;
import org.jdbi.v3.core.Jdbi;

/** Answers of an intake that is not finished, as they were typed. */
public final class DraftStore {
    private static final TypeReference<Map<String, List<String>>> ANSWERS = new TypeReference<>() {};

    private final Jdbi jdbi;
    private final Clock clock;

    DraftStore(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    public void keep(ClientId client, Map<String, List<String>> answers) {
        jdbi.useHandle(handle -> handle.createUpdate("""
                        insert into draft (client_id, answers, changed_at)
                        values (:client, :answers, :now)
                        on conflict (client_id) do update set answers = :answers, changed_at = :now""")
                .bind("client", client.value())
                .bind("answers", Json.write(answers))
                .bind("now", clock.instant().toString())
                .execute());
    }

    public Optional<Map<String, List<String>>> find(ClientId client) {
        return jdbi.withHandle(handle -> handle.createQuery("select answers from draft where client_id = :client")
                .bind("client", client.value())
                .mapTo(String.class)
                .findOne()
                .map(text -> Json.read(text, ANSWERS)));
    }

    public void drop(ClientId client) {
        jdbi.useHandle(handle -> handle.createUpdate("delete from draft where client_id = :client")
                .bind("client", client.value())
                .execute());
    }
}
