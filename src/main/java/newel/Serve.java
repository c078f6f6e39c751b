package newel;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import newel.casefile.Demo;
import newel.catalogue.Catalogue;
import newel.catalogue.Catalogues;
import newel.client.Client;
import newel.compose.Composer;
import newel.limit.Limitation;
import newel.limit.VariantDemands;
import newel.screen.Permission;
import newel.store.Database;
import newel.store.Ids;
import newel.store.Stores;
import newel.web.Practice;
import newel.web.Server;

/** {@code newel}: serves the pages until it is stopped. */
final class Serve {
    private static final String USAGE = """
            newel [--port 8080] [--data FOLDER] [--demo]   serve
            newel program CASE.json                        print the program for a case file
            newel program --schema                         print the schema of a case file
            newel check                                    check the catalogue
            newel sheet OUT.html                           draw every variant on one page""";

    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        Settings settings = Settings.read(arguments);
        if (!settings.faults().isEmpty()) {
            settings.faults().forEach(fault -> err.println("newel: " + fault));
            err.println(USAGE);
            return Newel.REFUSED;
        }
        serve(settings, out);
        return Newel.DONE;
    }

    private static void serve(Settings settings, PrintStream out) {
        Path folder = settings.demo() ? throwAway() : made(settings.data());
        Database database = Database.open(folder.resolve("newel.db"));
        Clock clock = Clock.systemDefaultZone();
        Catalogue catalogue = Catalogues.read().orStop();
        Practice practice = new Practice(catalogue, VariantDemands.ofBody(), clock);
        Stores stores = Stores.of(database, clock);
        if (settings.demo()) {
            demo(stores, practice);
        }
        Server server = new Server(settings.port(), settings.address(), stores, practice);
        server.start();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            server.close();
            database.close();
            if (settings.demo()) {
                remove(folder);
            }
        }));
        warm(stores, practice);
        out.println("Newel is at http://127.0.0.1:" + server.port() + "/  (data in " + folder + ")");
    }

    /** Judges every form for every client, and composes a little, before anybody waits for it. */
    private static void warm(Stores stores, Practice practice) {
        List<Client> clients = stores.clients().all().stream()
                .flatMap(opened -> stores.clients().find(opened.id()).stream())
                .toList();
        Thread.ofPlatform().daemon().priority(Thread.MIN_PRIORITY).start(() -> {
            clients.stream()
                    .map(practice::suiting)
                    .forEach(suiting -> practice.catalogue().variants().forEach(suiting::fit));
            new Composer(practice.catalogue()).warmUp(practice.anybody());
        });
    }

    /** The demo cast; those who may begin have a program already, composed side by side. */
    private static void demo(Stores stores, Practice practice) {
        stores.practice().save(Demo.settings());
        List<Client> cast = Demo.clients(practice.presets(), practice.today()).stream()
                .map(client -> stores.clients().add(withIds(client)))
                .flatMap(id -> stores.clients().find(id).stream())
                .toList();
        cast.parallelStream()
                .filter(client -> practice.screening(client).permission() == Permission.START)
                .map(client -> Map.entry(client.id(), practice.drafting(client).first()))
                .toList()
                .forEach(drafted -> drafted.getValue()
                        .made()
                        .ifPresent(first -> stores.programs().begin(drafted.getKey(), first)));
    }

    /** A case file's limitations are numbered within the file; in the database each needs a key of its own. */
    private static Client withIds(Client c) {
        List<Limitation> limitations =
                c.limitations().stream().map(each -> each.withId(Ids.next())).toList();
        return new Client(
                c.id(),
                c.profile(),
                c.home(),
                c.wishes(),
                c.readiness(),
                c.falls(),
                c.vitals(),
                c.measures(),
                limitations,
                c.look());
    }

    private static Path made(Path folder) {
        try {
            return Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path throwAway() {
        try {
            return Files.createTempDirectory("newel-demo-");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void remove(Path folder) {
        try (Stream<Path> found = Files.walk(folder)) {
            found.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(java.io.File::delete);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Serve() {}
}
