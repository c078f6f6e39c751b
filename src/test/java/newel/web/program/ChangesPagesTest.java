package newel.web.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import newel.People;
import newel.Shipped;
import newel.client.Client;
import newel.client.ClientId;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.program.Version;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Served;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The day a limitation is logged. */
class ChangesPagesTest extends Served {
    private ClientId id;
    private String client;

    @BeforeEach
    void start() {
        id = Cast.addWithProgram(running.stores, People.kneesAndPressure());
        client = "/clients/" + id.value();
    }

    @Test
    void logging_shows_at_once_what_no_longer_fits_and_one_press_makes_the_next_version() {
        Version before = newest();
        Browser.Page changes = log("frozen-shoulder", "left");

        assertEquals(client + "/program/changes", changes.path());
        assertTrue(changes.html().select(".change-pair").size() > 0);
        changes.html().select(".change-pair").forEach(pair -> {
            assertTrue(pair.select(".because li").size() > 0);
            assertTrue(pair.select(".was svg").size() > 0);
            assertTrue(pair.select(".now svg").size() > 0
                    || pair.select(".now").text().equals("Now Left out"));
        });
        assertTrue(changes.text(".because").contains("frozen shoulder, logged 3 March 2026, from the client"));
        assertEquals(before, newest());

        Browser.Page next = browser.press(changes, "Make the next version", Map.of());

        Version after = newest();
        assertEquals(2, after.number());
        assertEquals("Limitation logged: It is stiff at night, since 3 March 2026.", after.reason());
        Client kept = running.stores.clients().find(id).orElseThrow();
        after.firstSession()
                .items()
                .forEach(item -> assertEquals(
                        List.of(),
                        Shipped.suiting(kept).broken(Shipped.variant(item.variant()), item.share(), item.dose()),
                        item.variant()));
        assertTrue(next.text(".note").startsWith("Version 2 is made, and the handout is the new one."));
        assertEquals(
                before.firstSession().items().count(),
                browser.get(client + "/program/versions/1")
                        .html()
                        .select(".item")
                        .size());
        assertTrue(browser.get(client + "/program/handout").text(".first").contains("Version 2, 3 March 2026"));
    }

    @Test
    void a_limitation_that_changes_nothing_says_so() {
        Browser.Page changes = log("cannot-get-to-floor", "both");

        assertEquals("Everything still fits", changes.text("main h2"));
        assertEquals(
                0,
                changes.html().select("button:contains(Make the next version)").size());
    }

    @Test
    void a_limit_of_ones_own_is_logged_by_motion_side_and_degrees() {
        Browser.Page form = browser.get(client + "/limitations/new");
        Map<String, Object> own = Map.of(
                "limitation-what", "own",
                "limitation-side", "right",
                "limitation-motion", "shoulder-raise",
                "limitation-degrees", "80",
                "limitation-source", "clinician");

        browser.press(form, "Log it", own);

        Limitation logged = running.stores.limitations().of(id).getLast();
        assertEquals(
                List.of(new Limit.Angle(newel.body.Motion.SHOULDER_RAISE, newel.limit.Sided.RIGHT, 80)),
                logged.limits());
        assertEquals("Raises the arm to 80° at most", logged.words());
    }

    @Test
    void the_same_limitation_is_not_logged_twice_while_it_holds() {
        log("frozen-shoulder", "left");
        int before = running.stores.limitations().of(id).size();

        Browser.Page again = browser.press(
                browser.get(client + "/limitations/new"),
                "Log it",
                Map.of(
                        "limitation-what", "frozen-shoulder",
                        "limitation-side", "left",
                        "limitation-words", "Still stiff",
                        "limitation-source", "client"));

        assertEquals(422, again.status());
        assertEquals(
                List.of(
                        "This is logged already: Frozen shoulder, left side (“It is stiff at night”). Change or end that one, or choose another side."),
                again.texts(".errors li"));
        assertEquals("Still stiff", again.html().select("textarea").text());
        assertEquals(
                List.of("frozen-shoulder", "left", "client"),
                again.html().select("input[type=radio][checked]").eachAttr("value"));
        assertEquals(before, running.stores.limitations().of(id).size());
        log("frozen-shoulder", "right");
        assertEquals(before + 1, running.stores.limitations().of(id).size());
    }

    @Test
    void what_was_logged_anew_is_not_taken_up_a_second_time() {
        log("frozen-shoulder", "left");
        Limitation first = running.stores.limitations().of(id).getLast();
        Browser.Page page = browser.get(client);
        String token = page.html().select("[name=_token]").attr("value");
        browser.post(client + "/limitations/" + first.id() + "/end", "_token=" + token);
        log("frozen-shoulder", "left");
        int before = running.stores.limitations().of(id).size();

        Browser.Page told = browser.post(client + "/limitations/" + first.id() + "/resume", "_token=" + token);

        assertEquals("It was logged anew meanwhile and holds already.", told.text(".note"));
        assertEquals(before, running.stores.limitations().of(id).size());
    }

    @Test
    void a_form_with_gaps_names_each_of_them_and_keeps_the_words() {
        Browser.Page refused = browser.press(
                browser.get(client + "/limitations/new"),
                "Log it",
                Map.of("limitation-words", "My hip hurts", "limitation-since-year", "2090"));

        assertEquals(422, refused.status());
        assertEquals(
                List.of(
                        "Choose what it is.",
                        "Choose the side, or both.",
                        "Say who says so.",
                        "Check the day since when: it lies in the future."),
                refused.texts(".errors li"));
        assertEquals("My hip hurts", refused.html().select("textarea").text());
    }

    @Test
    void loosening_what_a_clinician_ordered_asks_why_and_keeps_the_reason() {
        Browser.Page form = browser.get(client + "/limitations/new");
        browser.press(
                form,
                "Log it",
                Map.of(
                        "limitation-what",
                        "own",
                        "limitation-side",
                        "left",
                        "limitation-motion",
                        "hip-flexion",
                        "limitation-degrees",
                        "90",
                        "limitation-source",
                        "clinician"));
        Limitation logged = running.stores.limitations().of(id).getLast();
        Browser.Page limits = browser.get(client + "/limitations/" + logged.id());

        Browser.Page refused = browser.press(limits, "Keep these limits", Map.of("limit-0", "100"));
        assertEquals(422, refused.status());
        assertEquals(List.of("Write why: a clinician ordered this, and you loosen it."), refused.texts(".errors li"));

        browser.press(limits, "Keep these limits", Map.of("limit-0", "85"));
        assertEquals(85, degrees());
        browser.press(
                browser.get(client + "/limitations/" + logged.id()),
                "Keep these limits",
                Map.of("limit-0", "100", "why", "The surgeon agreed on the phone"));
        assertEquals(100, degrees());
        assertTrue(browser.get(client + "/limitations/" + logged.id())
                .text("main")
                .contains("The surgeon agreed on the phone"));
    }

    @Test
    void a_limitation_that_no_longer_holds_can_be_taken_up_again() {
        int before = running.stores.limitations().of(id).size();
        String name =
                browser.get(client).html().select(".minded button").first().text();

        Browser.Page ended = browser.press(browser.get(client), name, Map.of());
        assertEquals(before - 1, running.stores.limitations().of(id).size());
        browser.press(ended, "Undo", Map.of());

        assertEquals(before, running.stores.limitations().of(id).size());
    }

    private double degrees() {
        return ((Limit.Angle)
                        running.stores.limitations().of(id).getLast().limits().getFirst())
                .maxDegrees();
    }

    private Browser.Page log(String preset, String side) {
        return browser.press(
                browser.get(client + "/limitations/new"),
                "Log it",
                Map.of(
                        "limitation-what",
                        preset,
                        "limitation-side",
                        side,
                        "limitation-source",
                        "client",
                        "limitation-words",
                        "It is stiff at night"));
    }

    private Version newest() {
        return running.stores.programs().of(id).orElseThrow().newest();
    }
}
