package newel.web;

import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import newel.Shipped;
import newel.store.Database;
import newel.store.Stores;

/** A real server on a free port over a real database, on the third of March 2026. */
public final class Running implements AutoCloseable {
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-03T12:00:00Z"), ZoneOffset.UTC);

    /** What forms ask is worked out once for all tests. */
    private static final Practice PRACTICE = new Practice(Shipped.CATALOGUE, Shipped.DEMANDS, CLOCK);

    public final Database database;
    public final Stores stores;
    private final Server server;

    public Running(Path folder) {
        database = Database.open(folder.resolve("newel.db"));
        stores = Stores.of(database, CLOCK);
        server = new Server(0, URI.create("http://127.0.0.1"), stores, PRACTICE).start();
    }

    public Browser browser() {
        return new Browser(address());
    }

    public String address() {
        return "http://127.0.0.1:" + server.port();
    }

    @Override
    public void close() {
        server.close();
        database.close();
    }
}
