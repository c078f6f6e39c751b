package newel.web.movement;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import newel.catalogue.Catalogue;
import newel.catalogue.Variant;
import newel.figure.Film;
import newel.figure.Look;
import newel.figure.Looks;
import newel.figure.Picture;
import newel.figure.Portrait;
import newel.handout.Pictures;
import newel.limit.Share;
import newel.limit.Shares;
import newel.web.Pages;
import newel.web.Routes;
import newel.web.stair.Drawn;

/** Drawings as files: of variants the last pose alone and all poses, and of each look a portrait. They say nothing about a client and may be kept. */
public final class DrawingRoutes implements Routes {
    private static final String AT = "/movements/{movement}/{variant}/{share}";
    /** A drawing has about 20 kB, so that these take 16 MB (design choice). */
    private static final int MOST_KEPT = 800;

    /** Colours stand in the drawing itself; nothing else may be loaded or run by it. */
    private static final String POLICY = "default-src 'none'; style-src 'unsafe-inline'";

    private static final ObjectMapper JSON = new ObjectMapper().setSerializationInclusion(JsonInclude.Include.NON_NULL);

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
        for (String folder : List.of(AT, AT + "/{look}")) {
            routes.get(folder + "/glimpse.svg", this::glimpse);
            routes.get(folder + "/picture.svg", this::picture);
            routes.get(folder + "/motion.json", this::motion);
        }
        routes.get("/looks/{look}/portrait.svg", this::portrait);
    }

    private void glimpse(Context ctx) {
        show(ctx, () -> DrawingPage.last(css, drawn(ctx)));
    }

    private void picture(Context ctx) {
        show(ctx, () -> DrawingPage.all(css, drawn(ctx)));
    }

    private void portrait(Context ctx) {
        show(ctx, () -> DrawingPage.last(css, Portrait.of(chosen(ctx))));
    }

    /** The path says all that is drawn, so that it is the key. */
    private void show(Context ctx, Supplier<DrawingPage> page) {
        byte[] drawing = kept.get(ctx.path());
        if (drawing == null) {
            drawing = pages.drawing("movement/drawing.jte", page.get());
            kept.put(ctx.path(), drawing);
        }
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("Cache-Control", "private, max-age=86400");
        ctx.contentType("image/svg+xml; charset=utf-8").result(drawing);
    }

    private void motion(Context ctx) {
        ctx.header("Cache-Control", "private, max-age=86400");
        ctx.contentType("application/json; charset=utf-8").result(written(ctx));
    }

    private byte[] written(Context ctx) {
        Variant variant = variant(ctx);
        Film film = Pictures.film(variant, share(ctx, variant), look(ctx)).orElseThrow(NotFoundResponse::new);
        try {
            return JSON.writeValueAsBytes(MotionPage.of(variant, film));
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Picture drawn(Context ctx) {
        Variant variant = variant(ctx);
        return Pictures.of(variant, share(ctx, variant), look(ctx));
    }

    /** Empty where the path names nobody: different people. */
    private static String look(Context ctx) {
        return ctx.pathParamMap().containsKey("look") ? chosen(ctx).id() : "";
    }

    private static Look chosen(Context ctx) {
        return Looks.of(ctx.pathParam("look")).orElseThrow(NotFoundResponse::new);
    }

    /** Only what a page can lead to: a variant of the movement, at a share that is tried for somebody. */
    private Variant variant(Context ctx) {
        return catalogue
                .variant(ctx.pathParam("variant"))
                .filter(each -> each.movement().equals(ctx.pathParam("movement")))
                .orElseThrow(NotFoundResponse::new);
    }

    private static Share share(Context ctx, Variant variant) {
        return Shares.mostFirst(variant).stream()
                .filter(each -> ctx.path().startsWith(Drawn.at(variant, each) + "/"))
                .findFirst()
                .orElseThrow(NotFoundResponse::new);
    }

    private static String css() {
        try (InputStream css = DrawingRoutes.class.getResourceAsStream("/static/css/figure.css")) {
            return new String(css.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
