package newel.web.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import newel.People;
import newel.Shipped;
import newel.catalogue.Dose;
import newel.catalogue.Movement;
import newel.catalogue.Purpose;
import newel.client.ClientId;
import newel.compose.Item;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.limit.Sided;
import newel.program.Brief;
import newel.program.Version;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Served;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class BriefPagesTest extends Served {
    private static final String COMPOSE = "Compose again";

    private ClientId id;
    private String program;

    @BeforeEach
    void start() {
        id = Cast.addWithProgram(running.stores, People.painfulShoulder());
        program = "/clients/" + id.value() + "/program";
    }

    @Test
    void what_is_asked_for_is_kept_in_the_version_and_stands_in_the_form_again() {
        Browser.Page next = press(Map.of(
                "minutes",
                "20",
                "also-in",
                "chair-stand",
                "also-out",
                "towel-row",
                "more",
                List.of("arms", "balance")));

        assertEquals(
                new Brief(20, Set.of("chair-stand"), Set.of("towel-row"), Set.of(Purpose.ARMS, Purpose.BALANCE)),
                newest().origin().brief());
        assertEquals("20", next.html().select("#brief-minutes").val());
        assertEquals(
                List.of("chair-stand"), next.html().select("[name=in][checked]").eachAttr("value"));
        assertEquals(
                List.of("towel-row"), next.html().select("[name=out][checked]").eachAttr("value"));
        assertEquals(
                List.of("arms", "balance"),
                next.html().select("[name=more][checked]").eachAttr("value"));
        assertTrue(browser.get(program + "/handout").text(".plan").contains("about 20 minutes"));
        assertTrue(
                next.text(".reason")
                        .startsWith(
                                "Why this version: Composed again: 20 minutes instead of 25; always in: chair stand; left out: towel row; more for: arms, balance."),
                next.text(".reason"));
    }

    @Test
    void with_everything_left_out_nothing_is_made_and_all_that_was_ticked_stays() {
        List<String> all =
                Shipped.CATALOGUE.movements().stream().map(Movement::id).toList();

        Browser.Page refused = press(Map.of("minutes", "30", "out", all));

        assertEquals(422, refused.status());
        assertTrue(refused.text(".errors").contains("These cannot hold together: "), refused.text(".errors"));
        assertEquals("30", refused.html().select("#brief-minutes").val());
        assertEquals(all.size(), refused.html().select("[name=out][checked]").size());
        assertEquals(1, newest().number());
    }

    @Test
    void what_cannot_be_asked_for_is_refused_by_its_field() {
        assertRefused("minutes", "Minutes must be a whole number from 10 to 60.", Map.of("minutes", "61"));
        assertRefused("also-out", "Choose a movement from the list.", Map.of("out", "no-such-movement"));
        assertRefused(
                "more", "Choose at most 3 to do more of.", Map.of("more", List.of("legs", "hips", "back", "arms")));
        assertRefused(
                "also-in",
                "Choose at most 7 that are always in.",
                Map.of(
                        "in",
                        Shipped.CATALOGUE.movements().stream()
                                .map(Movement::id)
                                .limit(8)
                                .toList()));
    }

    private void assertRefused(String field, String why, Map<String, ?> typed) {
        Browser.Page refused = press(typed);

        assertEquals(422, refused.status());
        assertEquals(why, refused.text(".errors p"));
        assertEquals("#brief-" + field, refused.html().select(".errors a").attr("href"));
        assertEquals(1, refused.html().select("[id=brief-" + field + "]").size());
        assertEquals(1, newest().number());
    }

    @Test
    void a_form_from_before_the_last_change_composes_nothing() {
        Browser.Page old = browser.get(program);
        browser.press(old, "Take it out", Map.of());

        Browser.Page stale = browser.press(old, COMPOSE, Map.of());

        assertEquals(409, stale.status());
        assertEquals(2, newest().number());
    }

    @Test
    void what_was_taken_out_stays_out_and_a_dose_that_was_set_stays_set() {
        List<Item> round = newest().firstSession().blocks().get(2).items();
        String out = round.getFirst().movement();
        String dosed = round.getLast().movement();
        browser.press(browser.get(program), "Change the dose", Map.of());
        post("/items/" + out + "/removal", "");
        post("/items/" + dosed + "/dose", "&sets=1&repetitions=3&seconds=0");
        Version byHand = newest();

        Browser.Page composed = press(Map.of());

        assertEquals(byHand.number() + 1, newest().number());
        assertTrue(newest().item(out).isEmpty());
        assertEquals(List.of(out), composed.html().select("[name=out][checked]").eachAttr("value"));
        newest().sessions()
                .forEach((day, session) -> session.item(dosed)
                        .ifPresent(item -> assertEquals(new Dose(1, 3, 0), item.dose(), day.toString())));
        assertEquals(byHand.days(dosed), newest().days(dosed));
    }

    @Test
    void what_was_set_by_hand_and_no_longer_fits_is_composed_anew() {
        Item first = newest().firstSession().blocks().get(2).items().getFirst();
        post("/items/" + first.movement() + "/dose", "&sets=1&repetitions=3&seconds=0");
        running.stores.limitations().add(id, neverStanding());

        press(Map.of());

        newest().items()
                .forEach(item -> assertEquals(
                        List.of(),
                        Shipped.suiting(running.stores.clients().find(id).orElseThrow())
                                .broken(Shipped.variant(item.variant()), item.share(), item.dose()),
                        item.variant()));
    }

    @Test
    void the_proof_is_of_the_session_as_composed_and_goes_when_it_is_changed() {
        assertTrue(browser.get(program).text(".proof").startsWith("Proved best: "));

        Browser.Page changed = browser.press(browser.get(program), "Move later", Map.of());

        assertEquals("Changed since it was composed.", changed.text(".proof"));
    }

    @Test
    void an_older_version_comes_back_unless_todays_limits_forbid_it() {
        Version first = newest();
        post("/items/" + first.firstSession().blocks().get(2).items().getFirst().movement() + "/removal", "");
        browser.press(browser.get(program + "/versions/1"), "Make this version the newest again", Map.of());

        assertEquals(3, newest().number());
        assertEquals(first.sessions(), newest().sessions());
        assertEquals("As version 1 was.", newest().reason());

        running.stores.limitations().add(id, neverStanding());
        Browser.Page kept =
                browser.press(browser.get(program + "/versions/1"), "Make this version the newest again", Map.of());

        assertEquals(3, newest().number());
        assertTrue(kept.text(".note").startsWith("Version 1 asks for more than today's limits allow."));
    }

    private static Limitation neverStanding() {
        return new Limitation(
                "seated",
                "",
                "Cannot stand",
                Sided.BOTH,
                Limitation.Source.CLIENT,
                People.TODAY,
                null,
                List.of(new Limit.Time(Limit.Lasting.STANDING, 0)),
                List.of());
    }

    private Browser.Page press(Map<String, ?> changes) {
        return browser.press(browser.get(program), COMPOSE, changes);
    }

    private void post(String act, String fields) {
        String token = browser.get(program).html().select("[name=_token]").attr("value");
        browser.post(program + act, "_token=" + token + "&version=" + newest().number() + fields);
    }

    private Version newest() {
        return running.stores.programs().of(id).orElseThrow().newest();
    }
}
