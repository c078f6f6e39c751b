package newel.web.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import newel.People;
import newel.client.Client;
import newel.client.ClientId;
import newel.store.ClientStore;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Served;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IntakePagesTest extends Served {
    private static final String ON = "Keep and go on";

    private static Map<String, Object> person() {
        Map<String, Object> typed = new HashMap<>();
        typed.put("person-name", "Ida Fairweather");
        typed.put("person-birth-day", "27");
        typed.put("person-birth-month", "march");
        typed.put("person-birth-year", "1950");
        typed.put("person-sex", "female");
        typed.put("person-stature", "161 cm");
        return typed;
    }

    private static final Map<String, Object> HOME = Map.of(
            "home-kit",
            List.of("chair", "towel", "wall"),
            "home-ceiling",
            "240",
            "home-clear",
            "2,5",
            "home-floor",
            "no");
    private static final Map<String, Object> WISHES = Map.of(
            "wishes-goals",
            List.of("posture"),
            "wishes-minutes",
            "20",
            "wishes-days",
            List.of("monday", "friday"),
            "wishes-experience",
            "new");

    @ParameterizedTest
    @CsvSource({
        "person-birth-day, 31, Check the date of birth: there is no such day. Write it like 27 3 1948.",
        "person-birth-year, 2090, Check the date of birth: it lies in the future.",
        "person-name, ' ', Type the name.",
        "person-stature, tall, Give the height as a whole number from 120 to 220 cm.",
        "person-stature, 1.61, Give the height as a whole number from 120 to 220 cm."
    })
    void what_cannot_be_used_gets_one_sentence_and_stays_as_typed(String field, String typed, String sentence) {
        Map<String, Object> answers = person();
        answers.put(field, typed);
        if (typed.equals("31")) {
            answers.put("person-birth-month", "2");
        }

        Browser.Page page = browser.press(browser.get("/clients/new"), ON, answers);

        assertEquals(422, page.status());
        assertEquals(List.of(sentence), page.texts(".errors li"));
        assertEquals(
                typed,
                page.html().select("[name=" + field + "]").attr("value").isEmpty()
                        ? " "
                        : page.html().select("[name=" + field + "]").attr("value"));
        assertEquals("Error: Step 1 of 6: The person - Newel", page.html().title());
        assertEquals(List.of(), running.stores.clients().all());
    }

    @Test
    void a_name_of_ten_thousand_characters_is_refused_and_a_hostile_one_is_shown_as_text() {
        Map<String, Object> answers = person();
        answers.put("person-name", "x".repeat(10_000));
        Browser.Page page = browser.press(browser.get("/clients/new"), ON, answers);
        assertEquals(
                List.of("Shorten the name: it has 10000 characters, and 120 is the most there is room for."),
                page.texts(".errors li"));

        String hostile = "<script>alert(1)</script> \"Ida\" & Co";
        answers.put("person-name", hostile);
        Browser.Page next = browser.press(browser.get("/clients/new"), ON, answers);
        assertEquals(200, next.status());
        assertTrue(next.text("main").contains(hostile));
        assertEquals(0, next.html().select("main script").size());
    }

    @Test
    void the_whole_intake_by_typing_keeps_every_answer() {
        ClientId id = typedThrough();

        Browser.Page check = browser.get(intake(id, "check"));
        Browser.Page done = browser.press(check, "Finish the intake", Map.of());

        assertEquals("/clients/" + id.value(), done.path());
        Client client = running.stores.clients().find(id).orElseThrow();
        assertEquals("Ida Fairweather", client.profile().name());
        assertEquals(75, client.profile().age(People.TODAY));
        assertEquals(161, client.profile().statureCm());
        assertEquals(2.5, client.home().clearMetres());
        assertEquals(20, client.wishes().minutes());
        assertEquals(
                List.of("frozen-shoulder"),
                client.limitations().stream().map(each -> each.preset()).toList());
        assertEquals(List.of(), running.stores.drafts().find(id).stream().toList());
    }

    @Test
    void going_back_and_forth_loses_nothing_not_even_what_is_wrong() {
        ClientId id = typedThrough();

        browser.press(browser.get(intake(id, "home")), "Keep and go back", Map.of("home-ceiling", "high"));

        assertEquals(
                "high",
                browser.get(intake(id, "home")).html().select("#home-ceiling").attr("value"));
        Browser.Page refused = browser.press(browser.get(intake(id, "check")), "Finish the intake", Map.of());
        assertEquals(422, refused.status());
        assertEquals(
                List.of("The home: Give the ceiling height as a whole number from 180 to 400 cm."),
                refused.texts(".errors li"));
        assertTrue(running.stores.clients().find(id).isEmpty());
    }

    @Test
    void a_limitation_that_was_begun_keeps_the_intake_open() {
        ClientId id = typedThrough();
        browser.press(browser.get(intake(id, "limitations")), "Keep and go back", Map.of("entry-what", "glaucoma"));

        Browser.Page refused = browser.press(browser.get(intake(id, "check")), "Finish the intake", Map.of());

        assertEquals(422, refused.status());
        assertEquals(
                List.of("A limitation was begun and is not taken down. Take it down, or empty its fields."),
                refused.texts(".errors li"));
    }

    @Test
    void a_finished_intake_can_be_changed_and_keeps_the_rest() {
        ClientId id = Cast.add(running.stores, People.outOfBreath());
        Client before = running.stores.clients().find(id).orElseThrow();

        browser.press(browser.get(intake(id, "wishes")), "Keep and check all", Map.of("wishes-minutes", "35"));
        browser.press(browser.get(intake(id, "check")), "Finish the intake", Map.of());

        Client after = running.stores.clients().find(id).orElseThrow();
        assertEquals(35, after.wishes().minutes());
        assertEquals(before.readiness(), after.readiness());
        assertEquals(before.vitals(), after.vitals());
        assertEquals(before.limitations(), after.limitations());
        assertEquals(before.home(), after.home());
    }

    @Test
    void the_same_limitation_is_not_taken_down_twice() {
        ClientId id = typedThrough();

        Browser.Page again = browser.press(
                browser.get(intake(id, "limitations")),
                ON,
                Map.of("entry-what", "frozen-shoulder", "entry-side", "left", "entry-source", "instructor"));

        assertEquals(422, again.status());
        assertEquals(
                List.of(
                        "This is logged already: Frozen shoulder, left side. Change or end that one, or choose another side."),
                again.texts(".errors li"));
        assertEquals(
                List.of("frozen-shoulder", "left", "instructor"),
                again.html().select("input[type=radio][checked]").eachAttr("value"));
    }

    @Test
    void an_unfinished_intake_stands_on_the_list_of_who_needs_something() {
        browser.press(browser.get("/clients/new"), ON, person());

        Browser.Page list = browser.get("/clients");

        assertEquals(List.of("Intake not finished"), list.texts(".needs li"));
    }

    /** Every step typed up to the check, with one limitation. */
    private ClientId typedThrough() {
        Browser.Page home = browser.press(browser.get("/clients/new"), ON, person());
        Browser.Page wishes = browser.press(home, ON, HOME);
        Browser.Page readiness = browser.press(wishes, ON, WISHES);
        Browser.Page limitations = browser.press(readiness, ON, Map.of("readiness-regular", "no"));
        Map<String, Object> entry =
                Map.of("entry-what", "frozen-shoulder", "entry-side", "left", "entry-source", "client");
        Browser.Page check = browser.press(limitations, ON, entry);
        assertTrue(check.text("main").contains("Frozen shoulder, left side"), check.text("main"));
        return running.stores.clients().all().stream()
                .map(ClientStore.Opened::id)
                .findFirst()
                .orElseThrow();
    }

    private static String intake(ClientId id, String step) {
        return "/clients/" + id.value() + "/intake/" + step;
    }
}
