package newel.web.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import newel.People;
import newel.client.Client;
import newel.client.ClientId;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Served;
import org.junit.jupiter.api.Test;

class HandoutPagesTest extends Served {
    /** How a source is known, and where it is from: nothing that a client or a doctor is helped by. */
    private static final List<String> INTERNAL = List.of(
            "read in a published copy", "from memory", "design choice", "common practice", "hold line", "et al.");

    @Test
    void a_link_opens_the_newest_handout_until_it_is_withdrawn() {
        String program = "/clients/"
                + Cast.addWithProgram(running.stores, People.painfulShoulder()).value() + "/program";
        Browser.Page made = browser.press(browser.get(program), "Make a link", Map.of());
        String link = made.html().select(".own-link").attr("href");
        assertTrue(link.matches("/h/[A-Za-z0-9_-]{27}"), link);

        Browser client = running.browser();
        assertTrue(client.get(link).text(".first").contains("Version 1, 3 March 2026"));
        browser.press(browser.get(program), "Take it out", Map.of());
        assertTrue(client.get(link).text(".first").contains("Version 2, 3 March 2026"));

        browser.press(browser.get(program), "Withdraw the link", Map.of());
        Browser.Page gone = client.get(link);
        assertEquals(410, gone.status());
        assertEquals("This link does not open anything", gone.text("h1"));
        String another = browser.press(browser.get(program), "Make a link", Map.of())
                .html()
                .select(".own-link")
                .attr("href");
        assertNotEquals(link, another);
        assertEquals(410, client.get(link).status());
        assertEquals(410, client.get("/h/guessed").status());
    }

    @Test
    void cautions_stop_signs_and_whom_to_call_come_before_the_first_movement() {
        String program = "/clients/"
                + Cast.addWithProgram(running.stores, People.painfulShoulder()).value() + "/program";

        String text = browser.get(program + "/handout").text("main");

        int stop = text.indexOf("Stop at once if you have");
        int mind = text.indexOf("Keep your sore arm below shoulder height");
        int call = text.indexOf("0555 014 233");
        int first = text.indexOf("Start", call);
        assertTrue(0 < stop && stop < mind && mind < call && call < first, text.substring(0, 600));
    }

    @Test
    void who_must_wait_is_told_not_to_exercise_even_under_an_older_link() {
        ClientId id = Cast.addWithProgram(running.stores, People.mustBeReferred());
        String token = running.stores
                .links()
                .make(running.stores.programs().of(id).orElseThrow().id());

        Browser.Page page = browser.get("/h/" + token);

        assertEquals("Please do not exercise yet", page.text("h1"));
        assertEquals(0, page.html().select(".movement").size());
    }

    @Test
    void sources_stand_beside_the_reasons_and_not_in_them() {
        String client =
                "/clients/" + Cast.add(running.stores, People.mustBeReferred()).value();

        Browser.Page page = browser.get(client);
        assertTrue(page.text(".sources").contains("read in a published copy"));
        for (String tag : INTERNAL) {
            assertFalse(page.text(".because").toLowerCase().contains(tag), tag);
        }
    }

    @Test
    void nobodys_own_page_shows_a_source_or_a_grade() {
        for (Client person : People.all()) {
            ClientId id = Cast.addWithProgram(running.stores, person);
            String token = running.stores
                    .links()
                    .make(running.stores.programs().of(id).orElseThrow().id());

            Browser.Page page = running.browser().get("/h/" + token);

            for (String tag : INTERNAL) {
                assertFalse(
                        page.text("body").toLowerCase().contains(tag),
                        person.profile().name() + ": " + tag);
            }
            assertEquals(0, page.html().select(".grades, .sources").size());
        }
    }

    @Test
    void the_instructor_sees_how_hard_each_movement_reads() {
        ClientId id = Cast.addWithProgram(running.stores, People.painfulShoulder());

        Browser.Page page = browser.get("/clients/" + id.value() + "/program/handout");

        assertTrue(
                page.text(".grades summary").matches("Reads at school grade \\d\\.\\d; 6 is the most"),
                page.text(".grades"));
        assertEquals(
                page.html().select("article.movement, .movement").size() + 1,
                page.html().select(".grades tbody tr").size());
        assertEquals(0, page.html().select(".hold").size());
    }

    @Test
    void the_case_file_holds_everything_but_who_it_is() {
        String client =
                "/clients/" + Cast.add(running.stores, People.brokenSpineBone()).value();

        Browser.Page page = browser.get(client + "/case.json");
        String json = page.response().body();

        assertEquals(
                "application/json;charset=utf-8",
                page.header("Content-Type").toLowerCase().replace(" ", ""));
        assertTrue(json.contains("\"vertebral-fracture\""));
        for (String secret : new String[] {"Dagny", "Ashworth", "1947", "Tove", "0555", "lifting a pot"}) {
            assertFalse(json.contains(secret), secret);
        }
    }
}
