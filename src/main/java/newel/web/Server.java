package newel.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.staticfiles.Location;
import java.net.URI;
import java.util.List;
import java.util.Map;
import newel.practice.Rulebook;
import newel.store.Stores;
import newel.web.client.ClientRoutes;
import newel.web.client.ExportRoutes;
import newel.web.client.LookRoutes;
import newel.web.falls.FallsRoutes;
import newel.web.handout.HandoutRoutes;
import newel.web.intake.IntakeRoutes;
import newel.web.limitation.LimitationRoutes;
import newel.web.measure.MeasureRoutes;
import newel.web.movement.DrawingRoutes;
import newel.web.movement.MovementRoutes;
import newel.web.pain.PainRoutes;
import newel.web.practice.PracticeRoutes;
import newel.web.program.BriefRoutes;
import newel.web.program.ChangesRoutes;
import newel.web.program.ItemRoutes;
import newel.web.program.ProgramRoutes;
import newel.web.program.ReturnRoutes;
import newel.web.program.SwapRoutes;
import newel.web.referral.ReferralRoutes;
import newel.web.referral.ReplyRoutes;
import newel.web.source.Shipped;
import newel.web.source.SignOffRoutes;
import newel.web.source.SourceRoutes;
import newel.web.today.TodayRoutes;
import org.eclipse.jetty.server.handler.SizeLimitHandler;

/** The web server: its settings, and the list of all routes. */
public final class Server implements AutoCloseable {
    private static final long MOST_BYTES_ASKED = 256 * 1024;
    private static final int NO_LIMIT = -1;

    private final Javalin javalin;

    /**
     * @param port 0 for any free one
     * @param address how browsers reach it; tells whether cookies may insist on TLS and what is printed on papers
     */
    public Server(int port, URI address, Stores stores, Practice practice) {
        FormToken token = new FormToken("https".equals(address.getScheme()));
        Rulebook rulebook = Shipped.rulebook(practice.presets());
        Pages pages = new Pages(token, () -> Around.of(stores, rulebook));
        stores.search().fill(practice.catalogue());
        Practice choosing = practice.choosing(
                stores.practice()::choices,
                stores.practice()::consensus,
                () -> Around.of(stores, rulebook).emergencyCall());
        javalin = Javalin.create(config -> {
            settings(config, port);
            new Guard(pages, token, address).add(config.routes);
            features(pages, stores, choosing, rulebook).forEach(routes -> routes.add(config.routes));
            new Errors(pages).add(config.routes);
        });
    }

    private static List<Routes> features(Pages pages, Stores stores, Practice practice, Rulebook rulebook) {
        return List.of(
                new IntakeRoutes(pages, stores, practice, practice.presets()),
                new ClientRoutes(pages, stores, practice),
                new ExportRoutes(stores),
                new LookRoutes(pages, stores, practice),
                new TodayRoutes(pages, stores, practice),
                new FallsRoutes(pages, stores, practice),
                new PainRoutes(pages, stores, practice),
                new LimitationRoutes(pages, stores, practice, practice.presets()),
                new MeasureRoutes(pages, stores, practice),
                new ChangesRoutes(pages, stores, practice),
                new ProgramRoutes(pages, stores, practice),
                new ItemRoutes(pages, stores, practice),
                new BriefRoutes(pages, stores, practice),
                new ReturnRoutes(stores, practice),
                new SwapRoutes(pages, stores, practice),
                new HandoutRoutes(pages, stores, practice),
                new PracticeRoutes(pages, stores),
                new SourceRoutes(pages, stores, rulebook),
                new SignOffRoutes(pages, stores, practice, rulebook),
                new ReferralRoutes(pages, stores, practice),
                new ReplyRoutes(pages, stores, practice),
                new MovementRoutes(pages, stores, practice),
                new DrawingRoutes(pages, practice.catalogue()));
    }

    private static void settings(JavalinConfig config, int port) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.jetty.host = "127.0.0.1";
        config.jetty.port = port;
        config.http.maxRequestSize = MOST_BYTES_ASKED;
        config.jetty.modifyServer(server -> server.insertHandler(new SizeLimitHandler(MOST_BYTES_ASKED * 2, NO_LIMIT)));
        config.staticFiles.add(files -> {
            files.directory = "/static";
            files.hostedPath = "/static";
            files.location = Location.CLASSPATH;
            files.headers = Map.of("Cache-Control", "max-age=86400");
        });
    }

    public Server start() {
        javalin.start();
        return this;
    }

    public int port() {
        return javalin.port();
    }

    @Override
    public void close() {
        javalin.stop();
    }
}
