package newel.web;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Proves that a form was shown by this server to this browser: a keyed digest of a random cookie. The key is made anew
 * at each start, so a page that was open across a restart carries an expired token.
 */
public final class FormToken {
    public static final String FIELD = "_token";
    private static final String COOKIE = "newel";
    private static final String DIGEST = "HmacSHA256";

    private final SecureRandom random = new SecureRandom();
    private final SecretKeySpec key = new SecretKeySpec(random(), DIGEST);
    private final boolean overTls;

    public FormToken(boolean overTls) {
        this.overTls = overTls;
    }

    public String of(Context ctx) {
        return digest(browser(ctx));
    }

    boolean matches(Context ctx) {
        String cookie = ctx.cookie(COOKIE);
        String given = given(ctx);
        return cookie != null && given != null && MessageDigest.isEqual(bytes(digest(cookie)), bytes(given));
    }

    private static String given(Context ctx) {
        String header = ctx.header("X-Newel-Token");
        return header != null ? header : ctx.formParam(FIELD);
    }

    /** The browser's own random name, given once and kept until the browser closes. */
    private String browser(Context ctx) {
        String known = ctx.attribute(COOKIE);
        String named = known != null ? known : ctx.cookie(COOKIE);
        if (named == null) {
            named = HexFormat.of().formatHex(random());
            ctx.cookie(Cookies.of(COOKIE, named, Cookies.UNTIL_CLOSED, overTls));
        }
        ctx.attribute(COOKIE, named);
        return named;
    }

    private String digest(String browser) {
        try {
            Mac mac = Mac.getInstance(DIGEST);
            mac.init(key);
            return HexFormat.of().formatHex(mac.doFinal(bytes(browser)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(DIGEST + " is part of every Java", e);
        }
    }

    private byte[] random() {
        byte[] bytes = new byte[32];
        random.nextBytes(bytes);
        return bytes;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
