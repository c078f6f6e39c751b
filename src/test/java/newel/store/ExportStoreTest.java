package newel.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import newel.client.ClientId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportStoreTest {
    @TempDir
    Path folder;

    @Test
    void every_table_that_hangs_on_a_client_is_exported() {
        try (Database database = Database.open(folder.resolve("newel.db"))) {
            Map<String, Set<String>> leads = new TreeMap<>();
            for (String table : tables(database)) {
                leads.put(table, foreign(database, table));
            }
            Set<String> hanging = new TreeSet<>(Set.of("client"));
            while (leads.entrySet().stream()
                    .filter(each -> each.getValue().stream().anyMatch(hanging::contains))
                    .map(Map.Entry::getKey)
                    .map(hanging::add)
                    .reduce(false, Boolean::logicalOr)) {}

            assertEquals(hanging, new TreeSet<>(ExportStore.TABLES.keySet()));
        }
    }

    @Test
    void of_a_client_without_anything_every_table_is_there_and_all_but_one_are_empty() {
        try (Database database = Database.open(folder.resolve("newel.db"))) {
            Stores stores = Stores.of(database, Clock.systemUTC());
            ClientId id = stores.clients().open("Edda");

            Map<String, List<Map<String, Object>>> all = stores.exports().of(id);

            assertEquals(ExportStore.TABLES.keySet(), all.keySet());
            assertEquals("Edda", all.get("client").getFirst().get("name"));
            assertEquals(1, all.values().stream().mapToInt(List::size).sum());
        }
    }

    private static List<String> tables(Database database) {
        return database.jdbi()
                .withHandle(handle -> handle.createQuery("select name from sqlite_master where type = 'table'")
                        .mapTo(String.class)
                        .list());
    }

    private static Set<String> foreign(Database database, String table) {
        return Set.copyOf(database.jdbi()
                .withHandle(
                        handle -> handle.createQuery("select distinct \"table\" from pragma_foreign_key_list(:table)")
                                .bind("table", table)
                                .mapTo(String.class)
                                .list()));
    }
}
