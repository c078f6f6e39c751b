package newel.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Jdbi;

/** The one SQLite file, migrated when opened. Stores are made from its {@link #jdbi()}. */
public final class Database implements AutoCloseable {
    private final HikariDataSource pool;
    private final Jdbi jdbi;

    private Database(HikariDataSource pool) {
        this.pool = pool;
        this.jdbi = Jdbi.create(pool);
    }

    /** Opens the file, makes it when it is missing, and brings its tables up to date. */
    public static Database open(Path file) {
        HikariDataSource pool = new HikariDataSource(settings(file));
        Flyway.configure()
                .dataSource(pool)
                .locations("classpath:migrations")
                .load()
                .migrate();
        return new Database(pool);
    }

    /**
     * A transaction takes the write lock when it begins: a deferred one that reads first and writes later fails as
     * busy when another wrote meanwhile, however long it is told to wait. So read by {@code withHandle}.
     */
    private static HikariConfig settings(Path file) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl("jdbc:sqlite:" + file
                + "?journal_mode=WAL&synchronous=FULL&busy_timeout=5000&foreign_keys=true&transaction_mode=IMMEDIATE");
        config.setMaximumPoolSize(4);
        config.setPoolName("newel");
        return config;
    }

    public Jdbi jdbi() {
        return jdbi;
    }

    @Override
    public void close() {
        pool.close();
    }
}
