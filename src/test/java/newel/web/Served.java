package newel.web;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A test over a running server: each has a server of its own over an empty database, and someone who reads them without scripts. */
public abstract class Served {
    @TempDir
    protected Path folder;

    protected Running running;
    protected Browser browser;

    @BeforeEach
    void startServer() {
        running = new Running(folder);
        browser = running.browser();
    }

    @AfterEach
    void stopServer() {
        running.close();
    }
}
