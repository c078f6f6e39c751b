package newel.web.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import newel.People;
import newel.client.ClientId;
import newel.practice.Country;
import newel.practice.Instructor;
import newel.practice.Settings;
import newel.screen.Choices;
import newel.screen.FallsSet;
import newel.screen.PainZones;
import newel.screen.RestSet;
import newel.store.Database;
import newel.store.Stores;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Running;
import newel.web.Served;
import org.junit.jupiter.api.Test;

class PracticePagesTest extends Served {
    private static final String UNSET = "Set your practice's name, phone and country.";

    @Test
    void until_it_is_set_the_app_works_and_one_place_asks_for_it() {
        Browser.Page clients = browser.get("/clients");

        assertEquals(200, clients.status());
        assertEquals(UNSET, clients.text("main .box b"));
        assertEquals("Your practice", clients.text(".top .practice"));
        assertTrue(clients.text(".foot").contains("call an ambulance first"));
        assertEquals(0, browser.get("/movements").html().select("main .box").size());
        assertEquals(Choices.strict(), running.stores.practice().choices());
    }

    @Test
    void the_strict_choices_are_ticked_before_anybody_chose() {
        Browser.Page page = browser.get("/practice");

        assertEquals(List.of("instructors"), ticked(page, "practice-rest"));
        assertEquals(List.of("as-published"), ticked(page, "practice-falls"));
        assertEquals(List.of("lower"), ticked(page, "practice-pain"));
        assertEquals(List.of(), ticked(page, "practice-country"));
    }

    @Test
    void settings_are_kept_and_stand_around_every_page() {
        Browser.Page kept = keep(larkfield());

        assertEquals("The settings are kept.", kept.text(".note p"));
        assertEquals(Optional.of(LARKFIELD), running.stores.practice().settings());
        Browser.Page clients = browser.get("/clients");
        assertEquals("Larkfield Hall", clients.text(".top .practice"));
        assertTrue(clients.text(".foot").contains("call 999 first"));
        assertEquals(0, clients.html().select("main .box").size());
    }

    @Test
    void settings_outlive_the_closing_of_the_file() {
        keep(larkfield());

        try (Database again = Database.open(folder.resolve("newel.db"))) {
            assertEquals(
                    Optional.of(LARKFIELD),
                    Stores.of(again, Running.CLOCK).practice().settings());
        }
    }

    @Test
    void a_country_that_is_not_on_the_list_brings_its_own_number() {
        keep(larkfield("practice-country", "other", "practice-country-name", "Iceland", "practice-emergency", "112"));

        assertEquals(
                Country.other("Iceland", "112"),
                running.stores.practice().settings().orElseThrow().country());
        assertEquals(
                "Iceland",
                browser.get("/practice").html().select("#practice-country-name").attr("value"));
    }

    @Test
    void another_choice_of_rules_is_kept_and_written_down() {
        keep(larkfield());

        Browser.Page changed =
                keep(larkfield("practice-rest", "testing", "practice-falls", "wider", "practice-pain", "higher"));

        assertEquals(
                new Choices(RestSet.TESTING, FallsSet.WIDER, PainZones.HIGHER),
                running.stores.practice().choices());
        List<String> changes = changed.texts("#changes ~ ul li");
        assertEquals(4, changes.size());
        assertTrue(changes.get(1)
                .endsWith("Pressure and pulse at rest: was “%s”, is “%s”."
                        .formatted(RestSet.INSTRUCTORS.words(), RestSet.TESTING.words())));
    }

    @Test
    void what_cannot_be_used_is_refused_with_one_sentence_each_and_stays_typed() {
        Browser.Page refused = keep(Map.of(
                "practice-name", "",
                "practice-phone", "call me",
                "practice-email", "rosa at larkfield",
                "practice-country", "other",
                "practice-country-name", "Iceland",
                "practice-emergency", "one one two",
                "practice-instructor", "Rosa Tallis"));

        assertEquals(422, refused.status());
        assertEquals(
                List.of(
                        "Type the name of the practice.",
                        "Check the phone number: digits, spaces, and + in front of a country.",
                        "Check the email: it has the form name@place.org.",
                        "Check the number for an ambulance: it has 2 to 10 digits.",
                        "Type the role."),
                refused.texts(".errors li"));
        assertEquals("call me", refused.html().select("#practice-phone").attr("value"));
        assertEquals("Iceland", refused.html().select("#practice-country-name").attr("value"));
        assertEquals(
                "Rosa Tallis", refused.html().select("#practice-instructor").attr("value"));
        assertEquals(List.of("other"), ticked(refused, "practice-country"));
        assertEquals(Optional.empty(), running.stores.practice().settings());
    }

    @Test
    void a_country_must_be_chosen() {
        Browser.Page refused = keep(larkfield("practice-country", "atlantis"));

        assertEquals(List.of("Choose the country, or another country."), refused.texts(".errors li"));
    }

    @Test
    void every_country_on_the_list_says_how_its_number_is_known() {
        Country.ALL.forEach(each -> {
            assertTrue(each.emergencyNumber().matches("\\d{3,5}"), each.name());
            assertTrue(!each.citation().isBlank() && each.known() != null, each.name());
        });
        assertEquals(
                Country.ALL.size(),
                Country.ALL.stream().map(Country::code).distinct().count());
    }

    @Test
    void whose_lines_on_muscle_loss_are_followed_decides_how_a_grip_is_read() {
        ClientId client = Cast.add(running.stores, People.fitAndBored());
        String measures = "/clients/" + client.value() + "/measures";
        browser.press(
                browser.get(measures + "/grip"),
                "Keep the result",
                Map.of("value", "27.5", "unit", "kilograms", "side", "right"));
        String before = browser.get(measures).text("main");

        keep(larkfield("practice-consensus", "asia"));

        String after = browser.get(measures).text("main");
        assertTrue(before.contains("Not low by the European working group. Flagged under 27 kg"), before);
        assertTrue(!before.contains("Asian working group"), before);
        assertTrue(after.contains("Low strength by the Asian working group. Flagged under 28 kg"), after);
        assertTrue(!after.contains("Not low by the European working group. Flagged"), after);
    }

    private static final Settings LARKFIELD = new Settings(
            "Larkfield Hall",
            "3 Tannery Row\nLarkfield",
            "0555 014 233",
            "rosa@larkfield.example",
            Country.of("gb").orElseThrow(),
            new Instructor("Rosa Tallis", "exercise instructor", "Level 4", "EX 77"),
            Choices.strict(),
            newel.assess.Consensus.EUROPE);

    private static Map<String, String> larkfield(String... changes) {
        Map<String, String> typed = new HashMap<>(Map.of(
                "practice-name", "Larkfield Hall",
                "practice-address", "3 Tannery Row\nLarkfield",
                "practice-phone", "0555 014 233",
                "practice-email", "rosa@larkfield.example",
                "practice-country", "gb",
                "practice-instructor", "Rosa Tallis",
                "practice-role", "exercise instructor",
                "practice-qualification", "Level 4",
                "practice-registration", "EX 77"));
        for (int at = 0; at < changes.length; at += 2) {
            typed.put(changes[at], changes[at + 1]);
        }
        return typed;
    }

    private Browser.Page keep(Map<String, String> typed) {
        return browser.press(browser.get("/practice"), "Keep the settings", typed);
    }

    private static List<String> ticked(Browser.Page page, String name) {
        return page.html().select("[name=" + name + "][checked]").eachAttr("value");
    }
}
