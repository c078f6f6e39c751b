package newel.web;

import io.javalin.http.Cookie;
import io.javalin.http.SameSite;

/** Cookies that no script reads and no other site sends along. */
final class Cookies {
    static final int UNTIL_CLOSED = -1;

    static Cookie of(String name, String value, int seconds, boolean overTls) {
        boolean httpOnly = true;
        return new Cookie(name, value, "/", seconds, overTls, httpOnly, null, SameSite.LAX);
    }

    private Cookies() {}
}
