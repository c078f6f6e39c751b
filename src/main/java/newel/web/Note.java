package newel.web;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * One line at the top of the next page that says what was just done.
 *
 * @param undo path that a press posts to in order to take it back, or empty
 */
public record Note(String text, String undo) {
    public static final Note NONE = new Note("", "");
    private static final String COOKIE = "newel-note";

    public static void leave(Context ctx, String text) {
        leave(ctx, text, "");
    }

    public static void leave(Context ctx, String text, String undo) {
        byte[] bytes = (undo + "\n" + text).getBytes(StandardCharsets.UTF_8);
        String value = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        ctx.cookie(Cookies.of(COOKIE, value, 60, false));
    }

    static Note take(Context ctx) {
        String left = ctx.cookie(COOKIE);
        if (left == null || left.isEmpty()) {
            return NONE;
        }
        ctx.cookie(Cookies.of(COOKIE, "", 0, false));
        return read(left);
    }

    private static Note read(String left) {
        try {
            String[] parts = new String(Base64.getUrlDecoder().decode(left), StandardCharsets.UTF_8).split("\n", 2);
            return parts.length == 2 ? new Note(parts[1], parts[0]) : NONE;
        } catch (IllegalArgumentException garbled) {
            return NONE;
        }
    }
}
