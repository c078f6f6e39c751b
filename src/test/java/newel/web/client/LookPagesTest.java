package newel.web.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import newel.People;
import newel.Shipped;
import newel.client.ClientId;
import newel.compose.Item;
import newel.figure.Look;
import newel.figure.Looks;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Served;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Who is drawn in a client's pictures. */
class LookPagesTest extends Served {
    private static final Look CORA = Looks.of("cora").orElseThrow();

    private ClientId id;
    private String client;

    @BeforeEach
    void start() {
        id = Cast.addWithProgram(running.stores, People.painfulShoulder());
        client = "/clients/" + id.value();
    }

    @Test
    void everyone_can_be_chosen_by_words_and_by_portrait() {
        Browser.Page page = browser.get(client);

        List<String> labels = new ArrayList<>(List.of("Different people"));
        Looks.all().forEach(look -> labels.add(capital(look.label())));
        assertEquals("Who is drawn", page.text("fieldset:has([name=look]) legend"));
        assertEquals(labels, page.texts("label.look"));
        assertEquals(List.of("different"), chosen(page));
        for (Look look : Looks.all()) {
            String src = page.html()
                    .select("#look-" + look.id())
                    .parents()
                    .select("label.look img")
                    .attr("src");
            Browser.Page portrait = browser.get(src);
            assertTrue(src.startsWith("/looks/" + look.id() + "/portrait.svg"), src);
            assertEquals(Set.of("picture " + look.style()), styles(portrait));
        }
    }

    @Test
    void who_is_chosen_is_drawn_in_the_program_its_changes_and_the_handout() {
        String token = running.stores
                .links()
                .make(running.stores.programs().of(id).orElseThrow().id());

        Browser.Page kept = choose("cora");

        assertEquals(client, kept.path());
        assertEquals("Pictures now show a broad woman with short white hair, dark skin.", kept.text(".note p"));
        assertEquals(List.of("cora"), chosen(kept));
        assertEquals("cora", look());
        Set<String> cora = Set.of("picture " + CORA.style());
        Browser.Page program = browser.get(client + "/program");
        assertEquals(cora, styles(program));
        assertEquals(cora, styles(browser.get(client + "/program/handout")));
        assertEquals(cora, styles(running.browser().get("/h/" + token)));
        assertEquals(cora, styles(logged()));
    }

    @Test
    void drawings_that_are_files_show_who_is_chosen() {
        choose("cora");
        Item item = first();
        String movements = "/movements/" + item.movement();

        List<String> drawn = Stream.of(
                        client + "/program",
                        client + "/program/items/" + item.movement(),
                        client + "/program/blocks/0/addition",
                        "/movements?client=" + id.value(),
                        movements + "?client=" + id.value(),
                        movements + "/" + item.variant() + "?client=" + id.value())
                .map(browser::get)
                .flatMap(page -> Stream.concat(
                        page.html().select("img[src*=glimpse]").eachAttr("src").stream(),
                        page.html().select("[data-motion]").eachAttr("data-motion").stream()))
                .toList();

        assertTrue(drawn.size() > 100, "drawings: " + drawn.size());
        drawn.forEach(path -> assertTrue(path.matches("/movements/[^/]+/[^/]+/[^/]+/cora/[^/]+"), path));
        String glimpse = drawn.getFirst();
        assertEquals(Set.of("picture " + CORA.style()), styles(browser.get(glimpse)));
        assertEquals(
                Set.of("picture " + Looks.of("ana").orElseThrow().style()),
                styles(browser.get(glimpse.replace("/cora/", "/ana/"))),
                "kept under its own key");
        String whole = "/movements/towel-row/towel-row-seated-edge/100-100";
        assertNotEquals(
                browser.get(whole + "/cora/motion.json").response().body(),
                browser.get(whole + "/elsa/motion.json").response().body());
        assertEquals(404, browser.get(whole + "/nobody/glimpse.svg").status());
        assertEquals(404, browser.get("/looks/nobody/portrait.svg").status());
    }

    @Test
    void as_long_as_nobody_is_chosen_different_people_are_drawn() {
        Browser.Page program = browser.get(client + "/program");

        List<String> spread = running.stores
                .programs()
                .of(id)
                .orElseThrow()
                .newest()
                .firstSession()
                .items()
                .map(item -> "picture " + Looks.spread(item.variant()).style())
                .toList();
        assertEquals(spread, program.html().select(".item-picture .picture").eachAttr("class"));
        assertTrue(Set.copyOf(spread).size() > 2);
        assertTrue(program.html().select("img[src*=glimpse]").eachAttr("src").stream()
                .allMatch(src -> src.matches("/movements/[^/]+/[^/]+/[^/]+/glimpse.svg.*")));
    }

    @Test
    void the_catalogue_of_nobody_shows_everyone_whoever_a_client_chose() {
        choose("cora");

        assertTrue(browser.get("/movements").html().select("img[src*=glimpse]").eachAttr("src").stream()
                .allMatch(src -> src.matches("/movements/[^/]+/[^/]+/100-100/glimpse.svg.*")));
    }

    @Test
    void the_choice_can_be_taken_back_and_undone() {
        choose("cora");
        Browser.Page changed = choose("ben");
        browser.press(changed, "Undo", Map.of());
        assertEquals("cora", look());

        Browser.Page back = choose("different");

        assertEquals("Pictures now show different people.", back.text(".note p"));
        assertEquals("", look());
        assertEquals("cora", lookAfter(browser.press(back, "Undo", Map.of())));
        assertEquals(0, choose("cora").html().select(".note button").size(), "nothing to undo");
    }

    @Test
    void somebody_who_is_not_there_is_refused_in_a_sentence_and_nothing_changes() {
        choose("cora");

        for (String nobody : List.of("nobody", "", "CORA", "../cora")) {
            Browser.Page refused = choose(nobody);

            assertEquals(422, refused.status());
            assertEquals(List.of("Choose one of the people shown, or different people."), refused.texts(".errors li"));
            assertEquals("Error: Choose one of the people shown, or different people.", refused.text("#look-fault"));
            assertEquals(
                    "look-hint look-fault",
                    refused.html().select("fieldset:has([name=look])").attr("aria-describedby"));
            assertEquals(List.of("cora"), chosen(refused));
            assertEquals("cora", look());
        }
    }

    @Test
    void intake_that_is_gone_through_again_keeps_who_is_drawn() {
        choose("cora");

        running.stores.clients().save(running.stores.clients().find(id).orElseThrow());

        assertEquals("cora", look());
    }

    @Test
    void a_client_who_is_not_there_is_not_found() {
        String token = browser.get(client).html().select("[name=_token]").attr("value");

        assertEquals(
                404,
                browser.post("/clients/nobody/look", "_token=" + token + "&look=cora")
                        .status());
        assertFalse(browser.post(client + "/look", "look=cora").status() < 400, "without a token");
        assertEquals("", look());
    }

    private Browser.Page choose(String said) {
        return browser.press(browser.get(client), "Keep this choice", Map.of("look", said));
    }

    /** The changes that a stiff shoulder asks for. */
    private Browser.Page logged() {
        Browser.Page changes = browser.press(
                browser.get(client + "/limitations/new"),
                "Log it",
                Map.of(
                        "limitation-what", "frozen-shoulder",
                        "limitation-side", "left",
                        "limitation-source", "client",
                        "limitation-words", "It is stiff at night"));
        assertTrue(changes.html().select(".change-pair").size() > 0);
        return changes;
    }

    private Item first() {
        return running.stores
                .programs()
                .of(id)
                .orElseThrow()
                .newest()
                .firstSession()
                .items()
                .filter(item -> Shipped.variant(item.variant()).keyPoses().size() > 1)
                .findFirst()
                .orElseThrow();
    }

    private String lookAfter(Browser.Page page) {
        assertEquals(client, page.path());
        return look();
    }

    private String look() {
        return running.stores.clients().find(id).orElseThrow().look();
    }

    private static List<String> chosen(Browser.Page page) {
        return page.html().select("[name=look][checked]").eachAttr("value");
    }

    private static Set<String> styles(Browser.Page page) {
        return Set.copyOf(page.html().select(".picture").eachAttr("class"));
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
