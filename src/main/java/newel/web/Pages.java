package newel.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import io.javalin.http.Context;
import java.util.Map;
import java.util.function.Supplier;

/** Renders templates. A template takes {@code frame} when it stands in the frame, and its own {@code page}. */
public final class Pages {
    private static final String HTML = "text/html; charset=utf-8";

    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
    private final FormToken token;
    private final Supplier<Around> around;
    private final String assets = Long.toString(System.currentTimeMillis(), Character.MAX_RADIX);

    /** @param around asked anew for each page */
    public Pages(FormToken token, Supplier<Around> around) {
        this.token = token;
        this.around = around;
        engine.setBinaryStaticContent(true);
    }

    public void show(Context ctx, String template, Object page) {
        Utf8ByteOutput output = new Utf8ByteOutput();
        engine.render(template, Map.of("frame", frame(ctx), "page", page), output);
        ctx.contentType(HTML).result(output.toByteArray());
    }

    /** The same page again with what was typed and what to mend. */
    public void refuse(Context ctx, String template, Object page) {
        ctx.status(422);
        show(ctx, template, page);
    }

    /** A drawing that stands in no frame. */
    public byte[] drawing(String template, Object page) {
        Utf8ByteOutput output = new Utf8ByteOutput();
        engine.render(template, Map.of("page", page), output);
        return output.toByteArray();
    }

    private Frame frame(Context ctx) {
        return new Frame(token.of(ctx), ctx.path(), assets, Note.take(ctx), around.get());
    }
}
