package newel.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.net.URI;
import java.util.Set;

/** Stands before every request: headers on each answer, known hosts only, and a fresh token on each form. */
final class Guard implements Routes {
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; "
            + "font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
    private static final Set<String> LOOPBACK = Set.of("127.0.0.1", "localhost", "[::1]");
    private static final Set<HandlerType> CHANGES =
            Set.of(HandlerType.POST, HandlerType.PUT, HandlerType.PATCH, HandlerType.DELETE);

    private final Pages pages;
    private final FormToken token;
    private final URI address;

    Guard(Pages pages, FormToken token, URI address) {
        this.pages = pages;
        this.token = token;
        this.address = address;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.before(Guard::headers);
        routes.before(this::knownHost);
        routes.before(this::freshForm);
    }

    private static void headers(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        if (!ctx.path().startsWith("/static/")) {
            ctx.header("Cache-Control", "no-store");
        }
    }

    /** Otherwise a foreign page whose name is made to point at this machine could read clients' pages. */
    private void knownHost(Context ctx) {
        String host = ctx.host() == null ? "" : ctx.host().replaceFirst(":\\d+$", "");
        if (!LOOPBACK.contains(host) && !host.equals(address.getHost())) {
            refuse(ctx, HttpStatus.MISDIRECTED_REQUEST, ErrorPage.UNKNOWN_HOST);
        }
    }

    private void freshForm(Context ctx) {
        if (!CHANGES.contains(ctx.method()) || token.matches(ctx)) {
            return;
        }
        if (foreign(ctx)) {
            refuse(ctx, HttpStatus.FORBIDDEN, ErrorPage.FOREIGN);
        } else {
            ctx.status(HttpStatus.FORBIDDEN);
            pages.show(ctx, "error/expired.jte", ExpiredPage.of(ctx));
            ctx.skipRemainingHandlers();
        }
    }

    /** Only a form that came from one of our own pages may be offered for sending again. */
    private static boolean foreign(Context ctx) {
        String site = ctx.header("Sec-Fetch-Site");
        String origin = ctx.header("Origin");
        boolean otherOrigin =
                origin != null && !origin.replaceFirst("^https?://", "").equals(ctx.host());
        return otherOrigin || (site != null && !site.equals("same-origin") && !site.equals("none"));
    }

    private void refuse(Context ctx, HttpStatus status, ErrorPage page) {
        ctx.status(status);
        pages.show(ctx, "error/problem.jte", page);
        ctx.skipRemainingHandlers();
    }
}
