package newel.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.security.SecureRandom;
import java.util.HexFormat;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The one place where what went wrong becomes a page. The stack trace goes to the log and nowhere else. */
final class Errors implements Routes {
    private static final Logger LOG = LoggerFactory.getLogger(Errors.class);
    private static final SecureRandom RANDOM = new SecureRandom();

    private final Pages pages;

    Errors(Pages pages) {
        this.pages = pages;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.exception(Exception.class, this::broken);
        routes.error(400, ctx -> problem(ctx, ErrorPage.UNREADABLE));
        routes.error(404, ctx -> problem(ctx, ErrorPage.NOT_FOUND));
        routes.error(405, ctx -> problem(ctx, ErrorPage.NOT_FOUND));
        routes.error(413, ctx -> problem(ctx, ErrorPage.TOO_LARGE));
    }

    private void broken(Exception exception, Context ctx) {
        String id = shortId();
        LOG.error("error {} at {} {}", id, ctx.method(), ctx.path(), exception);
        ctx.status(500);
        problem(ctx, ErrorPage.broken(id));
    }

    private void problem(Context ctx, ErrorPage page) {
        pages.show(ctx, "error/problem.jte", page);
    }

    private static String shortId() {
        byte[] bytes = new byte[3];
        RANDOM.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }
}
