package newel.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import newel.client.ClientId;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** Everything that is kept about one client, row by row as it stands, for a client who asks for it. */
public final class ExportStore {
    /** Each table, and which of its rows are the client's. */
    static final Map<String, String> TABLES = new LinkedHashMap<>();

    static {
        TABLES.put("client", "id = :client");
        List.of("draft", "limitation", "measured", "program", "day_check", "pain_log", "referral", "audit")
                .forEach(table -> TABLES.put(table, "client_id = :client"));
        TABLES.put("limitation_change", of("limitation"));
        List.of("version", "handout_link").forEach(table -> TABLES.put(table, of("program")));
        List.of("referral_sent", "referral_reply").forEach(table -> TABLES.put(table, of("referral")));
    }

    private final Jdbi jdbi;

    ExportStore(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    private static String of(String table) {
        return "%s_id in (select id from %s where client_id = :client)".formatted(table, table);
    }

    /** Table to rows; a table without a row of this client is there and empty. */
    public Map<String, List<Map<String, Object>>> of(ClientId client) {
        return jdbi.withHandle(handle -> {
            Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>();
            TABLES.forEach((table, where) -> all.put(table, rows(handle, table, where, client)));
            return all;
        });
    }

    private static List<Map<String, Object>> rows(Handle handle, String table, String where, ClientId client) {
        return handle.createQuery("select * from " + table + " where " + where)
                .bind("client", client.value())
                .mapToMap()
                .list();
    }
}
