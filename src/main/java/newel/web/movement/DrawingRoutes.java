package newel.web.movement;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import newel.catalogue.Catalogue;
import newel.catalogue.Variant;
import newel.figure.Picture;
import newel.handout.Pictures;
import newel.limit.Share;
import newel.limit.Shares;
import newel.web.Pages;
import newel.web.Routes;
import newel.web.stair.Drawn;

/** Drawings of variants as files: the last pose alone, and all poses. They say nothing about anybody and may be kept. */
public final class DrawingRoutes implements Routes {
    /** A drawing has about 20 kB, so that these take 16 MB (design choice). */
    private static final int MOST_KEPT = 800;

    /** Colours stand in the drawing itself; nothing else may be loaded or run by it. */
    private static final String POLICY = "default-src 'none'; style-src 'unsafe-inline'";

    private final Pages pages;
    private final Catalogue catalogue;
    private final String css = css();
    private final Map<String, byte[]> kept = Collections.synchronizedMap(new Newest());

    public DrawingRoutes(Pages pages, Catalogue catalogue) {
        this.pages = pages;
        this.catalogue = catalogue;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/movements/{movement}/{variant}/{share}/glimpse.svg", this::glimpse);
        routes.get("/movements/{movement}/{variant}/{share}/picture.svg", this::picture);
    }

    private void glimpse(Context ctx) {
        show(ctx, DrawingPage::last);
    }

    private void picture(Context ctx) {
        show(ctx, DrawingPage::all);
    }

    private void show(Context ctx, Layout layout) {
        byte[] drawing = kept.get(ctx.path());
        if (drawing == null) {
            drawing = pages.drawing("movement/drawing.jte", layout.of(css, drawn(ctx)));
            kept.put(ctx.path(), drawing);
        }
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("Cache-Control", "private, max-age=86400");
        ctx.contentType("image/svg+xml; charset=utf-8").result(drawing);
    }

    /** Only what a page can lead to: a variant of the movement, at a share that is tried for somebody. */
    private Picture drawn(Context ctx) {
        Variant variant = catalogue
                .variant(ctx.pathParam("variant"))
                .filter(each -> each.movement().equals(ctx.pathParam("movement")))
                .orElseThrow(NotFoundResponse::new);
        Share share = Shares.mostFirst(variant).stream()
                .filter(each -> ctx.path().startsWith(Drawn.at(variant, each) + "/"))
                .findFirst()
                .orElseThrow(NotFoundResponse::new);
        return Pictures.of(variant, share);
    }

    private static String css() {
        try (InputStream css = DrawingRoutes.class.getResourceAsStream("/static/css/figure.css")) {
            return new String(css.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private interface Layout {
        DrawingPage of(String css, Picture picture);
    }

    /** Forgets what was asked for longest ago. */
    private static final class Newest extends LinkedHashMap<String, byte[]> {
        Newest() {
            super(16, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, byte[]> eldest) {
            return size() > MOST_KEPT;
        }
    }
}
