package newel.web.pain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import newel.People;
import newel.client.ClientId;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Served;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PainPagesTest extends Served {
    private ClientId id;

    @BeforeEach
    void start() {
        id = Cast.add(running.stores, People.kneesAndPressure());
    }

    private static Map<String, Object> knee() {
        Map<String, Object> typed = new HashMap<>();
        typed.put("pain-kind", "joint-or-tendon");
        typed.put("pain-where", "left knee");
        typed.put("pain-during", "3");
        typed.put("pain-after", "2,5");
        typed.put("pain-usual", "1");
        typed.put("pain-week", "no");
        typed.put("pain-rest", "no");
        typed.put("pain-alarming", "no");
        return typed;
    }

    @Test
    void pain_is_logged_the_morning_is_told_later_and_two_bad_mornings_are_handed_on() {
        Browser.Page page = browser.press(browser.get(at()), "Log it", knee());
        assertEquals(List.of("Ask again the next morning."), page.texts(".pain .state"));

        page = morning(page, "2");
        assertEquals(List.of("One step easier next time."), page.texts(".pain .state"));

        page = morning(browser.press(page, "Log it", knee()), "2");
        assertEquals(
                List.of("Stop this movement and let a clinician look.", "One step easier next time."),
                page.texts(".pain .state"));
        assertEquals(2, running.stores.pains().of(id).size());
    }

    @Test
    void pain_in_the_chest_is_never_measured_by_zones() {
        Map<String, Object> chest = knee();
        chest.put("pain-kind", "chest");
        chest.put("pain-during", "0");

        Browser.Page page = browser.press(browser.get(at()), "Log it", chest);

        assertEquals(List.of("Emergency: call an ambulance now."), page.texts(".pain .state"));
        assertEquals(
                "Emergency: call an ambulance now",
                page.html()
                        .select("main > *:not(.note)")
                        .first()
                        .select(".alarm-words")
                        .text());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pain-during   | 12  | Give the pain during the session from 0 to 10.",
                "pain-after    | bad | Give the pain after the session from 0 to 10.",
                "pain-next     | -1  | Give the pain of the next morning from 0 to 10.",
                "pain-where    | ''  | Type where it hurts."
            })
    void nonsense_is_refused_and_everything_typed_stays(String field, String value, String sentence) {
        Map<String, Object> typed = knee();
        typed.put(field, value);

        Browser.Page page = browser.press(browser.get(at()), "Log it", typed);

        assertEquals(422, page.status());
        assertEquals(List.of(sentence), page.texts(".errors li"));
        assertEquals(value, page.html().select("#" + field).attr("value"));
        assertEquals("1", page.html().select("#pain-usual").attr("value"));
        assertEquals(List.of(), running.stores.pains().of(id));
    }

    @Test
    void a_morning_that_cannot_be_used_is_refused_at_its_own_log() {
        Browser.Page page = morning(browser.press(browser.get(at()), "Log it", knee()), "worse");

        assertEquals(422, page.status());
        assertEquals(List.of("Give the pain of the next morning from 0 to 10."), page.texts(".errors li"));
        assertEquals("worse", page.html().select("#morning").attr("value"));
    }

    private Browser.Page morning(Browser.Page page, String told) {
        String button = page.html().select(".pain .morning button").first().text();
        return browser.press(page, button, Map.of("morning", told));
    }

    private String at() {
        return "/clients/" + id.value() + "/pain";
    }
}
