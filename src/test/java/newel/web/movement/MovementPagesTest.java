package newel.web.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import newel.People;
import newel.Shipped;
import newel.catalogue.FlightPlan;
import newel.catalogue.Kit;
import newel.catalogue.Movement;
import newel.catalogue.Position;
import newel.catalogue.Purpose;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.client.ClientId;
import newel.client.Goal;
import newel.compose.Item;
import newel.compose.Suiting;
import newel.limit.Fit;
import newel.limit.Reason;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Served;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MovementPagesTest extends Served {
    private static final List<Movement> MOVEMENTS = Shipped.CATALOGUE.movements();

    @Test
    void without_a_filter_every_movement_is_shown_with_its_picture_and_why() {
        Browser.Page page = browser.get("/movements");

        assertEquals(ids(MOVEMENTS), cards(page));
        for (Movement movement : MOVEMENTS) {
            Element card = page.html().getElementById(movement.id());
            assertEquals(movement.name(), card.select("h3").text());
            assertEquals(movement.why(), card.select(".card-why").text());
            assertTrue(card.select("img").attr("src").contains("/" + movement.reference() + "/100-100/glimpse.svg"));
            assertTrue(card.select(".card-forms")
                    .text()
                    .startsWith(movement.variants().size() + " forms: "));
            assertEquals(0, card.select(".card-verdict").size(), "a verdict for nobody");
        }
        assertEquals(
                "%d movements of %d, in %d forms."
                        .formatted(
                                MOVEMENTS.size(),
                                MOVEMENTS.size(),
                                Shipped.CATALOGUE.variants().size()),
                page.text(".count"));
        assertEquals("Movements", page.text("nav a[aria-current=page]"));
    }

    @Test
    void each_filter_leaves_the_movements_that_have_such_a_form() {
        assertEquals(
                with(variant -> variant.purposes().weight(Purpose.CHEST) >= 2),
                cards(browser.get("/movements?trains=chest")));
        assertEquals(
                with(variant -> variant.purposes().mobility().contains(newel.catalogue.Region.NECK)),
                cards(browser.get("/movements?trains=moves-neck")));
        assertEquals(
                with(variant -> variant.position() == Position.LYING), cards(browser.get("/movements?position=lying")));
        assertEquals(
                with(variant -> Goal.SOCKS.servedBy(variant.purposes())), cards(browser.get("/movements?goal=socks")));
        assertEquals(
                with(variant -> Set.of(Kit.CHAIR, Kit.TOWEL).containsAll(variant.kit())),
                cards(browser.get("/movements?kit=chair&kit=towel")));
        assertEquals(
                with(variant -> Shipped.CATALOGUE.movementOf(variant).kind() == newel.catalogue.Kind.BALANCE),
                cards(browser.get("/movements?kind=balance")));
        assertEquals(
                with(variant -> variant.support() == newel.catalogue.Support.FINGERTIPS),
                cards(browser.get("/movements?support=fingertips")));
    }

    @Test
    void every_goal_and_every_purpose_finds_something() {
        for (Goal goal : Goal.values()) {
            String value = newel.web.form.Choice.of(goal);
            assertFalse(cards(browser.get("/movements?goal=" + value)).isEmpty(), value);
        }
        browser.get("/movements").html().select("#trains option").eachAttr("value").stream()
                .filter(value -> !value.isEmpty())
                .forEach(value -> assertFalse(
                        cards(browser.get("/movements?trains=" + value)).isEmpty(), value));
    }

    @Test
    void one_form_must_pass_all_filters_together() {
        Browser.Page page = browser.get("/movements?q=towel+row&position=standing");

        List<Variant> rows = movement("towel-row").variants().stream()
                .filter(variant -> variant.position() == Position.STANDING)
                .filter(variant -> running.stores.search().find("towel row").contains(variant.id()))
                .toList();
        assertEquals(
                "%d of %d forms: standing"
                        .formatted(rows.size(), movement("towel-row").variants().size()),
                page.text("#towel-row .card-forms"));
        assertEquals("towel-row", page.html().select(".card").first().id(), "the best of the text comes first");
        assertEquals("towel row", page.html().select("#q").attr("value"));
        assertEquals(
                "standing", page.html().select("#position option[selected]").attr("value"));
    }

    @Test
    void when_nothing_is_found_each_filter_can_be_taken_away_by_its_name() {
        Browser.Page page = browser.get("/movements?q=xylophone&position=lying");

        assertEquals("Nothing found.", page.text(".count"));
        assertEquals("Take away:", page.text(".taken-lead"));
        assertEquals(List.of("“xylophone”", "Position: lying"), page.texts(".taken-label"));
        assertEquals(
                "Take all of it away", page.html().select(".taken a").last().text());
        assertTrue(page.texts(".then").get(1).endsWith("still nothing"));
        Element withoutText = page.html().select(".taken a").first();
        Browser.Page after = browser.get(withoutText.attr("href"));
        assertEquals(with(variant -> variant.position() == Position.LYING), cards(after));
        assertTrue(withoutText.text().endsWith("then " + cards(after).size() + " movements"), withoutText::text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"\"", "AND", "towel OR", "<script>alert(1)</script>", "'; drop table search", "%00", "NEAR(a b"})
    void any_text_is_answered_and_kept_as_it_was_typed(String typed) {
        Browser.Page page = browser.get("/movements?q=" + URLEncoder.encode(typed, StandardCharsets.UTF_8));

        assertTrue(Set.of(200, 422).contains(page.status()), typed + ": " + page.status());
        assertEquals(typed, page.html().select("#q").attr("value"));
        assertEquals(0, page.html().select("main script").size());
    }

    @Test
    void a_filter_that_there_is_not_is_said_in_a_sentence_and_left_out() {
        Browser.Page page = browser.get("/movements?kind=flying&position=lying");

        assertEquals(422, page.status());
        assertEquals("Kind: there is no “flying” to choose. It was left out of the search.", page.text(".box.care"));
        assertEquals(with(variant -> variant.position() == Position.LYING), cards(page));
    }

    @Test
    void signs_without_a_word_are_said_to_be_no_search() {
        Browser.Page page = browser.get("/movements?q=%22%2A%22");

        assertEquals(422, page.status());
        assertEquals("“\"*\"” holds no word to look for. It was left out of the search.", page.text(".box.care"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/movements/no-such-movement",
                "/movements/towel-row/no-such-form",
                "/movements/heel-raise/towel-row-seated-edge",
                "/movements?client=nobody",
                "/movements/towel-row?client=nobody",
                "/movements/towel-row/towel-row-seated-edge?client=nobody",
                "/movements/towel-row/towel-row-seated-edge/17-100/glimpse.svg",
                "/movements/towel-row/no-such-form/100-100/glimpse.svg"
            })
    void what_is_not_there_is_not_found_in_plain_words(String path) {
        Browser.Page page = browser.get(path);

        assertEquals(404, page.status());
        assertEquals("There is nothing at this address", page.text("h1"));
    }

    @Test
    void for_a_client_each_card_counts_what_fits_is_trimmed_and_is_out_with_every_reason() {
        Client client = known(People.painfulShoulder());
        Suiting suiting = Shipped.suiting(client);
        Browser.Page page = browser.get("/movements?client=" + client.id().value());

        assertEquals("Odile Marchbanks", page.text(".client-name a"));
        for (Movement movement : MOVEMENTS) {
            Element card = page.html().getElementById(movement.id());
            assertEquals(
                    counted(movement, suiting), card.select(".card-verdict p").text(), movement.id());
            List<String> reasons = movement.variants().stream()
                    .flatMap(variant -> reasons(suiting.fit(variant)).stream())
                    .toList();
            assertEquals(reasons, card.select(".told li").eachText(), movement.id());
        }
    }

    @Test
    void only_what_fits_leaves_out_what_does_not_but_still_counts_it() {
        Client client = known(People.mustBeReferred());
        Suiting suiting = Shipped.suiting(client);
        String path = "/movements?client=" + client.id().value();
        Set<String> fitting = with(variant -> !(suiting.fit(variant) instanceof Fit.DoesNotFit));
        assertTrue(fitting.size() < MOVEMENTS.size(), "something must be out altogether");

        Browser.Page page = browser.get(path + "&fits=yes");

        assertEquals(fitting, cards(page));
        assertEquals(ids(MOVEMENTS), cards(browser.get(path)));
        String some = fitting.iterator().next();
        assertEquals(counted(movement(some), suiting), page.text("#" + some + " .card-verdict p"));
    }

    @Test
    void only_what_the_home_has_leaves_forms_that_need_nothing_else() {
        Client client = known(People.painfulShoulder());

        Browser.Page page =
                browser.get("/movements?home=yes&client=" + client.id().value());

        assertEquals(with(variant -> client.home().kit().containsAll(variant.kit())), cards(page));
    }

    @Test
    void the_stair_holds_every_form_from_the_easiest_with_its_links_in_words() {
        Movement row = movement("towel-row");
        Browser.Page page = browser.get("/movements/towel-row");

        assertEquals(
                FlightPlan.of(row).places().stream()
                        .map(place -> place.variant().id())
                        .toList(),
                page.html().select(".map > .step").eachAttr("id"));
        for (Variant variant : row.variants()) {
            Element step = page.html().getElementById(variant.id());
            assertEquals(
                    variant.easier().stream().map(link -> "#" + link.easier()).toList(),
                    step.select(".step-links a").eachAttr("href"));
            assertEquals(variant.name(), step.select(".step-name a").text());
        }
        assertTrue(page.text("#towel-row-seated-edge .step-links").endsWith("more support"));
        assertEquals(row.faults().size(), page.html().select(".faults dt").size());
        assertEquals(row.claims(), page.texts("[aria-labelledby=claims] li"));
        assertTrue(page.text("[aria-labelledby=claims]").contains("Not reviewed by a clinician."));
        assertTrue(page.text(".trained").contains("Back mainly"));
    }

    @Test
    void every_movement_has_its_page_and_so_has_its_hardest_form() {
        ClientId id = Cast.addWithProgram(running.stores, People.painfulShoulder());
        for (Movement movement : MOVEMENTS) {
            String path = "/movements/" + movement.id();
            Variant hardest = FlightPlan.of(movement).places().getLast().variant();

            assertEquals(
                    movement.name(), browser.get(path + "?client=" + id.value()).text("h1"));
            Browser.Page form = browser.get(path + "/" + hardest.id() + "?client=" + id.value());
            assertEquals(hardest.name(), form.text("h1"));
            assertEquals(hardest.words().steps(), form.texts("[aria-labelledby=words] li"));
        }
    }

    @Test
    void for_a_client_each_step_shows_its_state_in_words_with_every_reason_and_the_trim() {
        Client client = known(People.painfulShoulder());
        Suiting suiting = Shipped.suiting(client);
        Movement press = movement("overhead-press");
        Browser.Page page =
                browser.get("/movements/overhead-press?client=" + client.id().value());
        assertTrue(
                press.variants().stream().anyMatch(variant -> suiting.fit(variant) instanceof Fit.FitsTrimmed)
                        && press.variants().stream()
                                .anyMatch(variant -> suiting.fit(variant) instanceof Fit.DoesNotFit),
                "the case must hold what is tested");

        for (Variant variant : press.variants()) {
            Element step = page.html().getElementById(variant.id());
            Fit fit = suiting.fit(variant);
            assertEquals(reasons(fit), step.select(".step-why li").eachText());
            if (fit instanceof Fit.FitsTrimmed trimmed) {
                long percent = Math.round(100 * trimmed.share().least());
                assertTrue(step.hasClass("part"));
                assertTrue(step.select(".step-state").text().contains("to " + percent + " % of the way"));
                assertEquals(Long.toString(percent), step.select(".gauge .way").attr("height"));
                assertFalse(step.select("img").attr("src").contains("100-100"), "drawn at its trim");
            } else {
                assertEquals(
                        fit instanceof Fit.Fits ? "Fits." : "Does not fit.",
                        step.select(".step-state").text());
                assertEquals(0, step.select(".gauge").size());
            }
        }
    }

    @Test
    void the_step_that_is_in_the_program_is_filled() {
        ClientId id = Cast.addWithProgram(running.stores, People.fitAndBored());
        Item item = item(id);

        Browser.Page page = browser.get("/movements/" + item.movement() + "?client=" + id.value());

        assertEquals(List.of(item.variant()), page.html().select(".step.here").eachAttr("id"));
        assertTrue(page.text(".step.here .step-state").startsWith("Now here."));
    }

    @Test
    void a_form_tells_what_falls_and_what_rises_along_each_link() {
        Browser.Page page = browser.get("/movements/overhead-press/press-standing");
        String easier = page.text("[aria-labelledby=easier] .neighbour");

        assertTrue(easier.contains("easier position"), easier);
        assertTrue(easier.contains("Position: standing, then sitting at the edge"), easier);
        assertEquals(
                Shipped.variant("press-standing").easier().size(),
                page.html().select("[aria-labelledby=easier] .neighbour").size());
        assertEquals(
                Shipped.CATALOGUE.harder(Shipped.variant("press-standing")).size(),
                page.html().select("[aria-labelledby=harder] .neighbour").size());
        assertTrue(page.text(".asks").contains("Raises the arm"), page.text(".asks"));
        assertEquals(0, page.html().select(".in-program").size(), "nobody's program");
    }

    @Test
    void a_fitting_form_goes_into_the_program_by_one_press() {
        ClientId id = Cast.addWithProgram(running.stores, People.fitAndBored());
        Client client = running.stores.clients().find(id).orElseThrow();
        Item item = item(id);
        Variant other = movement(item.movement()).variants().stream()
                .filter(variant -> !variant.id().equals(item.variant()))
                .filter(variant -> Shipped.suiting(client).fit(variant) instanceof Fit.Fits)
                .findFirst()
                .orElseThrow();
        Browser.Page page = browser.get("/movements/" + other.movement() + "/" + other.id() + "?client=" + id.value());

        Browser.Page program = browser.press(page, "Put it in the place of that form", Map.of());

        assertEquals("/clients/" + id.value() + "/program", program.path());
        assertTrue(program.text(".note").endsWith("This is version 2. Undo"), program.text(".note"));
        assertEquals(
                other.id(),
                running.stores
                        .programs()
                        .of(id)
                        .orElseThrow()
                        .newest()
                        .firstSession()
                        .item(other.movement())
                        .orElseThrow()
                        .variant());
    }

    @Test
    void a_movement_that_is_not_in_the_program_is_added_to_a_part_that_takes_its_kind() {
        ClientId id = Cast.addWithProgram(running.stores, People.fitAndBored());
        Client client = running.stores.clients().find(id).orElseThrow();
        Variant missing = MOVEMENTS.stream()
                .filter(movement -> movement.kind() == newel.catalogue.Kind.STRENGTH)
                .filter(movement -> running.stores
                        .programs()
                        .of(id)
                        .orElseThrow()
                        .newest()
                        .firstSession()
                        .item(movement.id())
                        .isEmpty())
                .flatMap(movement -> movement.variants().stream())
                .filter(variant -> Shipped.suiting(client).fit(variant) instanceof Fit.Fits)
                .findFirst()
                .orElseThrow();
        Browser.Page page =
                browser.get("/movements/" + missing.movement() + "/" + missing.id() + "?client=" + id.value());

        browser.press(page, "Add it to round 1", Map.of());

        assertEquals(
                missing.id(),
                running.stores
                        .programs()
                        .of(id)
                        .orElseThrow()
                        .newest()
                        .firstSession()
                        .item(missing.movement())
                        .orElseThrow()
                        .variant());
    }

    @Test
    void a_form_that_does_not_fit_leads_to_where_a_reason_is_written() {
        ClientId id = Cast.addWithProgram(running.stores, People.painfulShoulder());
        Browser.Page page = browser.get("/movements/overhead-press/press-standing?client=" + id.value());

        assertEquals(0, page.html().select(".in-program form").size());
        Element lead = page.html().select(".in-program .acts a").first();
        String[] at = lead.attr("href").split("#");
        Browser.Page reason = browser.get(at[0]);
        assertEquals("textarea", reason.html().getElementById(at[1]).tagName());
        assertTrue(page.text(".box.care").contains("Does not fit."));
    }

    @Test
    void a_client_leads_to_the_movements_for_them() {
        ClientId id = Cast.add(running.stores, People.painfulShoulder());

        String path = browser.get("/clients/" + id.value())
                .html()
                .select("a:contains(Movements for)")
                .attr("href");

        assertEquals("Odile Marchbanks", browser.get(path).text(".client-name a"));
    }

    @Test
    void a_drawing_is_a_file_that_runs_nothing_and_may_be_kept() {
        String src = browser.get("/movements").html().select("#towel-row img").attr("src");

        Browser.Page drawing = browser.get(src);

        assertEquals(
                "image/svg+xml;charset=utf-8",
                drawing.header("Content-Type").replace(" ", "").toLowerCase());
        assertEquals("private, max-age=86400", drawing.header("Cache-Control"));
        assertEquals("default-src 'none'; style-src 'unsafe-inline'", drawing.header("Content-Security-Policy"));
        assertTrue(drawing.html().select("svg polygon").size() > 10);
    }

    private Client known(Client person) {
        return running.stores.clients().find(Cast.add(running.stores, person)).orElseThrow();
    }

    private Item item(ClientId id) {
        return running.stores
                .programs()
                .of(id)
                .orElseThrow()
                .newest()
                .firstSession()
                .items()
                .filter(each -> movement(each.movement()).kind() == newel.catalogue.Kind.STRENGTH)
                .findFirst()
                .orElseThrow();
    }

    private static Movement movement(String id) {
        return Shipped.CATALOGUE.movement(id).orElseThrow();
    }

    private static Set<String> cards(Browser.Page page) {
        return Set.copyOf(page.html().select(".card").eachAttr("id"));
    }

    private static Set<String> ids(List<Movement> movements) {
        return movements.stream().map(Movement::id).collect(Collectors.toSet());
    }

    private static Set<String> with(java.util.function.Predicate<Variant> form) {
        return ids(MOVEMENTS.stream()
                .filter(movement -> movement.variants().stream().anyMatch(form))
                .toList());
    }

    private static List<String> reasons(Fit fit) {
        return switch (fit) {
            case Fit.Fits fits -> List.of();
            case Fit.FitsTrimmed trimmed ->
                trimmed.reasons().stream().map(Reason::text).toList();
            case Fit.DoesNotFit not -> not.reasons().stream().map(Reason::text).toList();
        };
    }

    /** Counted anew: "5 fit, 1 trimmed, 3 out", what is none left out. */
    private static String counted(Movement movement, Suiting suiting) {
        int[] counts = new int[3];
        for (Variant variant : movement.variants()) {
            Fit fit = suiting.fit(variant);
            counts[fit instanceof Fit.Fits ? 0 : fit instanceof Fit.FitsTrimmed ? 1 : 2]++;
        }
        String text = "";
        text += counts[0] == 0 ? "" : ", " + counts[0] + (counts[0] == 1 ? " fits" : " fit");
        text += counts[1] == 0 ? "" : ", " + counts[1] + " trimmed";
        text += counts[2] == 0 ? "" : ", " + counts[2] + " out";
        return text.substring(2);
    }

    @Test
    void a_film_comes_with_its_seconds_and_a_hold_has_none() throws Exception {
        String row = "/movements/towel-row/towel-row-seated-edge/100-100/motion.json";
        JsonNode film = new ObjectMapper().readTree(browser.get(row).response().body());

        assertEquals(4, film.get("box").size());
        assertEquals(2, film.get("going").asDouble());
        assertEquals(1, film.get("hold").asDouble());
        assertEquals(3, film.get("coming").asDouble());
        assertEquals("[[0.0,2.0]]", film.get("out").toString());
        assertEquals(25, film.get("passes").get(0).size());
        assertEquals(
                404,
                browser.get("/movements/stance-hold/stance-apart-two/100-100/motion.json")
                        .status());
    }
}
