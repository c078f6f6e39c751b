package newel.web;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Reads pages and sends forms as a browser without scripts does: with cookies, following where it is led. */
public final class Browser {
    /** @param path where it ended up after being led on */
    public record Page(int status, String path, Document html, HttpResponse<String> response) {
        public String text(String css) {
            return html.select(css).text();
        }

        public List<String> texts(String css) {
            return html.select(css).eachText();
        }

        public String header(String name) {
            return response.headers().firstValue(name).orElse("");
        }
    }

    private final String address;
    private final CookieManager cookies = new CookieManager();
    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(cookies)
            .followRedirects(HttpClient.Redirect.NORMAL)
            .build();

    public Browser(String address) {
        this.address = address;
    }

    public CookieManager cookies() {
        return cookies;
    }

    public Page get(String path) {
        return send(request(path).GET());
    }

    /** Sends the form that holds a button, as it stands on the page but for the given changes, by that button. */
    public Page press(Page page, String button, Map<String, ?> changes) {
        Element pressed = page.html().select("button").stream()
                .filter(element -> element.text().equals(button))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + button + " among " + page.texts("button")));
        Element form =
                pressed.hasAttr("form") ? page.html().getElementById(pressed.attr("form")) : pressed.closest("form");
        List<String> pairs = standing(form, changes.keySet());
        changes.forEach((name, value) -> all(value).forEach(one -> pairs.add(pair(name, one.toString()))));
        if (pressed.hasAttr("name")) {
            pairs.add(pair(pressed.attr("name"), pressed.attr("value")));
        }
        return post(
                pressed.hasAttr("formaction") ? pressed.attr("formaction") : form.attr("action"),
                String.join("&", pairs));
    }

    /** Sends a body as it is, without a token unless it holds one. */
    public Page post(String path, String body) {
        return send(request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    public HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(address + path));
    }

    public Page send(HttpRequest.Builder request) {
        try {
            HttpResponse<String> response = client.send(request.build(), HttpResponse.BodyHandlers.ofString());
            return new Page(response.statusCode(), response.uri().getPath(), Jsoup.parse(response.body()), response);
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    private static List<String> standing(Element form, Set<String> changed) {
        List<String> pairs = new ArrayList<>();
        for (Element field : form.select("input[name], textarea[name], select[name]")) {
            boolean tick = Set.of("radio", "checkbox").contains(field.attr("type"));
            if (!changed.contains(field.attr("name")) && (!tick || field.hasAttr("checked"))) {
                pairs.add(pair(field.attr("name"), value(field)));
            }
        }
        return pairs;
    }

    private static String value(Element field) {
        return switch (field.tagName()) {
            case "textarea" -> field.wholeText();
            case "select" -> field.select("option[selected]").attr("value");
            default -> field.attr("value");
        };
    }

    private static Iterable<?> all(Object value) {
        return value instanceof Iterable<?> several ? several : List.of(value);
    }

    private static String pair(String name, String value) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8) + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8);
    }
}
