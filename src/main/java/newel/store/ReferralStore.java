package newel.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import newel.client.ClientId;
import newel.referral.ClientCopy;
import newel.referral.Consent;
import newel.referral.Draft;
import newel.referral.Letter;
import newel.referral.Note;
import newel.referral.NoteId;
import newel.referral.Reply;
import newel.referral.Stage;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.Query;

/** Referral notes. A draft may change; what was sent and what came back are written once. */
public final class ReferralStore {
    private static final String NOTES = """
            select referral.*, sent_on, way, letter, copy, reply
            from referral
            left join referral_sent on referral_sent.referral_id = referral.id
            left join referral_reply on referral_reply.referral_id = referral.id
            """;

    private final Jdbi jdbi;
    private final Clock clock;

    ReferralStore(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    public NoteId open(ClientId client, Draft draft, LocalDate on) {
        NoteId id = new NoteId(Ids.next());
        jdbi.useHandle(handle -> handle.createUpdate("""
                        insert into referral (id, client_id, opened_on, draft, consent, changed_at)
                        values (:id, :client, :on, :draft, :consent, :now)""")
                .bind("id", id.value())
                .bind("client", client.value())
                .bind("on", on.toString())
                .bind("draft", Json.write(draft))
                .bind("consent", Json.write((Consent) new Consent.NotAsked()))
                .bind("now", now())
                .execute());
        return id;
    }

    public Optional<Note> find(ClientId client, NoteId id) {
        return jdbi.withHandle(handle -> handle.createQuery(NOTES + "where client_id = :client and referral.id = :id")
                .bind("client", client.value())
                .bind("id", id.value())
                .map((row, context) -> note(row))
                .findOne());
    }

    /** Newest first. */
    public List<Note> of(ClientId client) {
        return jdbi.withHandle(handle -> {
            Query query = handle.createQuery(NOTES + "where client_id = :client order by referral.id desc");
            return query.bind("client", client.value())
                    .map((row, context) -> note(row))
                    .list();
        });
    }

    /** Everybody's notes about which something is still to be done. */
    public Map<ClientId, List<Note>> open() {
        Map<ClientId, List<Note>> open = new LinkedHashMap<>();
        jdbi.useHandle(handle -> handle.createQuery(
                        NOTES + "where dropped_at is null and reply is null order by referral.id")
                .map((row, context) -> Map.entry(new ClientId(row.getString("client_id")), note(row)))
                .forEach(each -> {
                    if (each.getValue().open()) {
                        open.computeIfAbsent(each.getKey(), key -> new java.util.ArrayList<>())
                                .add(each.getValue());
                    }
                }));
        return open;
    }

    /** Changes a draft; false when it was sent or dropped meanwhile. */
    public boolean change(NoteId id, Draft draft, Consent consent) {
        return jdbi.withHandle(handle -> handle.createUpdate("""
                                update referral set draft = :draft, consent = :consent, changed_at = :now
                                where id = :id and dropped_at is null
                                    and not exists (select 1 from referral_sent where referral_id = :id)""")
                        .bind("draft", Json.write(draft))
                        .bind("consent", Json.write(consent))
                        .bind("now", now())
                        .bind("id", id.value())
                        .execute()
                == 1);
    }

    public boolean drop(NoteId id) {
        return mark(id, now());
    }

    public boolean takeUp(NoteId id) {
        return mark(id, null);
    }

    private boolean mark(NoteId id, String droppedAt) {
        return jdbi.withHandle(handle -> handle.createUpdate("""
                                update referral set dropped_at = :dropped, changed_at = :now
                                where id = :id and not exists (select 1 from referral_sent where referral_id = :id)""")
                        .bind("dropped", droppedAt)
                        .bind("now", now())
                        .bind("id", id.value())
                        .execute()
                == 1);
    }

    /** Keeps what went out; false when it went out before. */
    public boolean send(NoteId id, Stage.Sent sent) {
        return jdbi.inTransaction(handle -> handle.createUpdate("""
                                insert into referral_sent (referral_id, sent_on, way, letter, copy, kept_at)
                                select :id, :on, :way, :letter, :copy, :now
                                where exists (select 1 from referral where id = :id and dropped_at is null)
                                    and not exists (select 1 from referral_sent where referral_id = :id)""")
                        .bind("id", id.value())
                        .bind("on", sent.on().toString())
                        .bind("way", sent.way().name())
                        .bind("letter", Json.write(sent.letter()))
                        .bind("copy", Json.write(sent.copy()))
                        .bind("now", now())
                        .execute()
                == 1);
    }

    /** Keeps what came back; false when nothing was sent or it was answered before. */
    public boolean answer(NoteId id, Reply reply) {
        return jdbi.inTransaction(handle -> insert(handle, id, reply) == 1);
    }

    private int insert(Handle handle, NoteId id, Reply reply) {
        return handle.createUpdate("""
                        insert into referral_reply (referral_id, reply, kept_at)
                        select :id, :reply, :now
                        where exists (select 1 from referral_sent where referral_id = :id)
                            and not exists (select 1 from referral_reply where referral_id = :id)""")
                .bind("id", id.value())
                .bind("reply", Json.write(reply))
                .bind("now", now())
                .execute();
    }

    private String now() {
        return clock.instant().toString();
    }

    private static Note note(ResultSet row) throws SQLException {
        return new Note(
                new NoteId(row.getString("id")),
                LocalDate.parse(row.getString("opened_on")),
                Json.read(row.getString("draft"), Draft.class),
                Json.read(row.getString("consent"), Consent.class),
                stage(row));
    }

    private static Stage stage(ResultSet row) throws SQLException {
        String on = row.getString("sent_on");
        if (on == null) {
            return row.getString("dropped_at") == null ? new Stage.Drafted() : new Stage.Dropped();
        }
        Stage.Sent sent = new Stage.Sent(
                LocalDate.parse(on),
                Stage.Way.valueOf(row.getString("way")),
                Json.read(row.getString("letter"), Letter.class),
                Json.read(row.getString("copy"), ClientCopy.class));
        String reply = row.getString("reply");
        return reply == null ? sent : new Stage.Answered(sent, Json.read(reply, Reply.class));
    }
}
