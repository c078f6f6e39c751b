package newel.web.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import newel.People;
import newel.Shipped;
import newel.catalogue.Dose;
import newel.client.ClientId;
import newel.compose.Item;
import newel.compose.Suiting;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.limit.Sided;
import newel.program.Version;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Served;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ProgramPagesTest extends Served {
    private ClientId id;
    private String program;

    @BeforeEach
    void start() {
        id = Cast.addWithProgram(running.stores, People.painfulShoulder());
        program = "/clients/" + id.value() + "/program";
    }

    @Test
    void a_client_without_a_program_gets_a_draft_by_one_press() {
        ClientId other = Cast.add(running.stores, People.fitAndBored());
        Browser.Page none = browser.get("/clients/" + other.value() + "/program");
        assertEquals("There is no program yet", none.text("main h2"));

        Browser.Page drafted = browser.press(none, "Draft the program", Map.of());

        assertEquals("First program after intake.", newest(other).reason());
        assertEquals(
                newest(other).firstSession().items().count(),
                drafted.html().select(".item").size());
        assertTrue(drafted.html().select(".item svg[role=img]").size()
                >= drafted.html().select(".item").size());
    }

    @Test
    void a_press_on_harder_makes_the_next_version_and_says_so() {
        Browser.Page page = browser.get(program);
        String harder = page.html().select(".item-stair form").stream()
                .filter(form -> form.text().startsWith("Harder"))
                .findFirst()
                .orElseThrow()
                .select("[name=variant]")
                .attr("value");

        Browser.Page next =
                browser.press(page, "Harder: " + Shipped.variant(harder).name(), Map.of());

        assertEquals(2, newest().number());
        assertTrue(
                newest().firstSession().items().anyMatch(item -> item.variant().equals(harder)));
        assertTrue(next.text(".note").endsWith("This is version 2. Undo"), next.text(".note"));
    }

    @Test
    void what_does_not_fit_comes_in_only_with_a_written_reason_which_is_kept_and_shown() {
        String movement = "push-up";
        assertTrue(newest().firstSession().item(movement).isPresent(), "the draft has no push-up");
        Browser.Page swap = browser.get(program + "/items/" + movement);
        String act = program + "/items/" + movement + "/swap";
        String token = swap.html().select("[name=_token]").attr("value");

        Browser.Page refused = browser.post(act, body(token, 1, "push-chair-seat", ""));
        assertEquals(422, refused.status());
        assertTrue(refused.text(".errors").contains("does not fit: Takes effort"), refused.text(".errors"));
        assertEquals(1, newest().number());

        Browser.Page kept =
                browser.post(act, body(token, 1, "push-chair-seat", "She did it for years and wants it back"));
        assertEquals(200, kept.status());
        Item item = newest().firstSession().item(movement).orElseThrow();
        assertEquals("push-chair-seat", item.variant());
        assertEquals("She did it for years and wants it back", item.override());
        assertTrue(kept.text("#" + movement).contains("Your reason: She did it for years and wants it back"));
    }

    @Test
    void a_dose_is_changed_and_letters_are_refused_with_nothing_changed() {
        Item first = newest().firstSession().items().findFirst().orElseThrow();
        String act = program + "/items/" + first.movement() + "/dose";
        String token = browser.get(program).html().select("[name=_token]").attr("value");

        Browser.Page refused = browser.post(act, "_token=" + token + "&version=1&sets=1&repetitions=many&seconds=0");
        assertEquals(422, refused.status());
        assertEquals("Times must be a whole number from 0 to 60.", refused.text(".errors p"));
        assertEquals(1, newest().number());

        browser.post(act, "_token=" + token + "&version=1&sets=1&repetitions=12&seconds=0");
        assertEquals(
                new Dose(1, 12, 0),
                newest().firstSession().item(first.movement()).orElseThrow().dose());
    }

    @Test
    void a_refused_dose_stays_as_it_was_typed() {
        Item first = newest().firstSession().items().findFirst().orElseThrow();
        String at = "dose-" + first.movement() + "-repetitions";
        String act = program + "/items/" + first.movement() + "/dose";
        String token = browser.get(program).html().select("[name=_token]").attr("value");

        Browser.Page refused = browser.post(act, "_token=" + token + "&version=1&sets=2&repetitions=many&seconds=7");

        assertEquals("#" + at, refused.html().select(".errors a").attr("href"));
        var item = refused.html().getElementById(first.movement());
        assertEquals(
                List.of("many", "7", "2"), item.select(".dose-form label input").eachAttr("value"));
        assertEquals(
                "Error: Times must be a whole number from 0 to 60.",
                item.select("#dose-" + first.movement() + "-fault").text());
        assertEquals(List.of(at), item.select("[aria-invalid]").eachAttr("id"));
        assertEquals(1, item.select("details.change[open]").size());
        assertEquals(1, refused.html().select("details.change[open]").size());
    }

    @Test
    void a_dose_that_is_too_much_says_why_and_stays_as_it_was_typed() {
        ClientId sore = Cast.addWithProgram(running.stores, People.fitAndBored());
        running.stores.limitations().add(sore, tenMinutesOnTheFeet());
        Dose huge = new Dose(5, 60, 600);
        Suiting suiting = Shipped.suiting(running.stores.clients().find(sore).orElseThrow());
        Item held = newest(sore)
                .firstSession()
                .items()
                .filter(item -> !suiting.broken(Shipped.variant(item.variant()), item.share(), huge)
                        .isEmpty())
                .findFirst()
                .orElseThrow();
        String base = "/clients/" + sore.value() + "/program";
        String token = browser.get(base).html().select("[name=_token]").attr("value");

        Browser.Page refused = browser.post(
                base + "/items/" + held.movement() + "/dose",
                "_token=" + token + "&version=1&sets=5&repetitions=60&seconds=600");

        assertEquals(422, refused.status());
        assertTrue(refused.text(".errors p").startsWith("This is too much: "), refused.text(".errors"));
        assertEquals(
                List.of("60", "600", "5"),
                refused.html()
                        .getElementById(held.movement())
                        .select(".dose-form label input")
                        .eachAttr("value"));
        assertEquals(held, newest(sore).firstSession().item(held.movement()).orElseThrow());
    }

    private static Limitation tenMinutesOnTheFeet() {
        return new Limitation(
                "ten-minutes",
                "",
                "Ten minutes on the feet",
                Sided.BOTH,
                Limitation.Source.CLIENT,
                People.TODAY,
                null,
                List.of(new Limit.Time(Limit.Lasting.STANDING, 600)),
                List.of());
    }

    @Test
    void items_are_moved_taken_out_and_added() {
        List<String> before = movements();
        browser.press(browser.get(program), "Move later", Map.of());
        assertEquals(before.get(0), movements().get(1));

        browser.press(browser.get(program), "Take it out", Map.of());
        assertFalse(movements().contains(before.get(1)));

        Browser.Page adding = browser.get(program + "/blocks/0/addition");
        String added = adding.html().select("#flight-" + before.get(1)).isEmpty() ? "none" : before.get(1);
        assertEquals(before.get(1), added);
        String take = adding.html().select("section.flight").stream()
                .filter(flight -> flight.select("#flight-" + before.get(1)).size() == 1)
                .findFirst()
                .orElseThrow()
                .select(".fits button, .part button")
                .text()
                .split("(?=Take this)")[0]
                .strip();
        browser.press(adding, take, Map.of());
        assertTrue(movements().contains(before.get(1)));
        assertEquals(4, newest().number());
    }

    @Test
    void a_change_to_a_program_that_has_moved_on_is_not_made() {
        Browser.Page old = browser.get(program);
        browser.press(old, "Take it out", Map.of());
        int items = movements().size();

        Browser.Page stale = browser.press(old, "Take it out", Map.of("version", "1"));

        assertTrue(stale.status() == 409 || stale.status() == 404, "status " + stale.status());
        assertEquals(2, newest().number());
        assertEquals(items, movements().size());
    }

    @Test
    void an_older_version_stays_readable_with_what_changed_after_it() {
        String gone = newest().firstSession().items().findFirst().orElseThrow().variant();
        browser.press(browser.get(program), "Take it out", Map.of());

        Browser.Page older = browser.get(program + "/versions/1");
        Browser.Page newer = browser.get(program);

        assertTrue(older.text("main").contains("This is an older version, kept as it was."));
        assertEquals(0, older.html().select(".item form").size());
        assertTrue(older.text(".items").contains(Shipped.variant(gone).name()));
        assertTrue(newer.text("[aria-labelledby=changed]")
                .contains("Gone " + Shipped.variant(gone).name()));
    }

    @Test
    void who_must_wait_sees_it_on_the_face_of_the_program_and_gives_out_no_handout() {
        ClientId waits = Cast.addWithProgram(running.stores, People.mustBeReferred());

        Browser.Page page = browser.get("/clients/" + waits.value() + "/program");

        assertTrue(page.text(".box.stop").contains("Do not start yet. This waits for a doctor or another clinician."));
        assertTrue(page.text(".handing").contains("The handout is not given out yet"));
        assertEquals(0, page.html().select("form[action$=/link]").size());
    }

    @Test
    void while_a_red_flag_stops_everything_nothing_is_drafted() {
        ClientId stopped = Cast.add(running.stores, People.fitAndBored());
        String client = "/clients/" + stopped.value();
        browser.press(
                browser.get(client + "/intake/readiness"),
                "Keep and check all",
                Map.of("readiness-flag-chest-pain-now", "yes"));
        browser.press(browser.get(client + "/intake/check"), "Finish the intake", Map.of());

        Browser.Page none = browser.get(client + "/program");
        String token = none.html().select("[name=_token]").attr("value");

        assertTrue(
                none.text(".box.stop").contains("No exercise. Call the emergency number now."), none.text(".box.stop"));
        assertEquals(0, none.html().select("button:contains(Draft)").size());
        String other = browser.get(program).html().select("[name=_token]").attr("value");
        browser.post(client + "/program", "_token=" + (token.isEmpty() ? other : token));
        assertTrue(running.stores.programs().of(stopped).isEmpty());
    }

    private static String body(String token, int version, String variant, String override) {
        return "_token=%s&version=%d&variant=%s&override=%s"
                .formatted(token, version, variant, override.replace(" ", "+"));
    }

    private List<String> movements() {
        return newest().firstSession().items().map(Item::movement).toList();
    }

    private Version newest() {
        return newest(id);
    }

    private Version newest(ClientId client) {
        return running.stores.programs().of(client).orElseThrow().newest();
    }
}
