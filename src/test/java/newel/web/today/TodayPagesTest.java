package newel.web.today;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import newel.People;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Client;
import newel.client.ClientId;
import newel.client.DaySign;
import newel.client.Disease;
import newel.client.ReadinessAnswers;
import newel.screen.Checked;
import newel.screen.Today;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Served;
import newel.web.form.Choice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TodayPagesTest extends Served {
    private static final String PRESS = "May it go on?";

    private static Map<String, Object> well() {
        Map<String, Object> typed = new HashMap<>();
        for (DaySign sign : DaySign.values()) {
            typed.put("today-" + Choice.of(sign), "no");
        }
        typed.put("today-pain", "0");
        typed.put("today-systolic", "128");
        typed.put("today-diastolic", "76");
        typed.put("today-pulse", "70");
        typed.put("today-feels", "no");
        return typed;
    }

    @Test
    void a_day_with_nothing_to_tell_goes_on_and_is_kept_with_its_date() {
        ClientId id = Cast.addWithProgram(running.stores, People.fitAndBored());

        Browser.Page page = browser.press(browser.get(at(id)), PRESS, well());

        assertEquals(200, page.status());
        assertEquals("Go.", page.text(".box .alarm-words"));
        assertEquals(13, page.html().select(".stops > div").size());
        Checked kept = running.stores.checks().of(id).getFirst();
        assertEquals(People.TODAY, kept.on());
        assertEquals(new Today.Go(List.of()), kept.outcome());
        assertEquals(128, kept.answers().vitals().systolic());
        assertEquals("Go.", browser.get("/clients/" + id.value()).text(".today b"));
        assertEquals("Go.", browser.get("/clients/" + id.value() + "/program").text(".today b"));
    }

    @Test
    void before_a_check_the_client_s_page_asks_for_one() {
        ClientId id = Cast.addWithProgram(running.stores, People.fitAndBored());

        Browser.Page page = browser.get("/clients/" + id.value());

        assertEquals("Not checked today.", page.text(".today b"));
        assertEquals(at(id), page.html().select(".today a").attr("href"));
    }

    @Test
    void chest_pain_shows_the_number_of_the_practice_before_anything_else() {
        ClientId id = Cast.addWithProgram(running.stores, People.fitAndBored());
        running.stores.practice().save(newel.casefile.Demo.settings());
        Map<String, Object> typed = well();
        typed.put("today-chest", "yes");

        Browser.Page page = browser.press(browser.get(at(id)), PRESS, typed);

        String number = newel.casefile.Demo.settings().country().emergencyNumber();
        assertEquals(
                "Emergency: call " + number + " now",
                page.html().select("main > *").first().select(".alarm-words").text());
        assertEquals(0, page.html().select(".stops").size());
        assertTrue(page.text(".places").contains("Referral note"));
        // It stays up after the day, until the readiness answers are changed.
        assertEquals(
                List.of("Chest pain or pressure at rest, or that does not go within minutes of stopping."),
                browser.get("/clients/" + id.value() + "/program").texts(".alarm li"));
    }

    @Test
    void a_no_for_today_closes_the_client_s_own_page_until_a_later_check_says_yes() {
        ClientId id = Cast.addWithProgram(running.stores, People.fitAndBored());
        Browser.Page program =
                browser.press(browser.get("/clients/" + id.value() + "/program"), "Make a link", Map.of());
        String link = program.html().select(".own-link").attr("href");
        assertTrue(browser.get(link).text("h1").startsWith("Exercises for"));
        Map<String, Object> ill = well();
        ill.put("today-ill", "yes");

        browser.press(browser.get(at(id)), PRESS, ill);

        assertEquals("Please do not exercise yet", browser.get(link).text("h1"));
        browser.press(browser.get(at(id)), PRESS, well());
        assertTrue(browser.get(link).text("h1").startsWith("Exercises for"));
    }

    @Test
    void a_bad_night_means_light_work_only() {
        ClientId id = Cast.addWithProgram(running.stores, People.fitAndBored());
        Map<String, Object> typed = well();
        typed.put("today-slept-badly", "yes");

        Browser.Page page = browser.press(browser.get(at(id)), PRESS, typed);

        assertEquals("Light work only: easy talk, no resistance, nothing new.", page.text(".box .alarm-words"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "today-pain     | lots | Give the pain as a whole number from 0 to 10.",
                "today-pain     | 11   | Give the pain as a whole number from 0 to 10.",
                "today-systolic | 12   | Give the upper blood pressure as a whole number from 60 to 280 mmHg.",
                "today-systolic | 70   | Check the blood pressure: the upper figure must be larger than the lower one.",
                "today-pulse    | fast | Give the resting pulse as a whole number from 25 to 220.",
                "today-chest    | maybe| Answer: Pain or pressure in the chest, jaw or arm, now or since last time."
            })
    void nonsense_is_refused_with_one_sentence_and_everything_typed_stays(String field, String value, String sentence) {
        ClientId id = Cast.addWithProgram(running.stores, People.fitAndBored());
        Map<String, Object> typed = well();
        typed.put("today-temperature", "36,6");
        typed.put(field, value);

        Browser.Page page = browser.press(browser.get(at(id)), PRESS, typed);

        assertEquals(422, page.status());
        assertEquals(List.of(sentence), page.texts(".errors li"));
        assertEquals("36,6", page.html().select("#today-temperature").attr("value"));
        assertEquals(
                1, page.html().select("[name=today-leg][value=no][checked]").size());
        if (!field.equals("today-chest")) {
            assertEquals(value, page.html().select("[name=" + field + "]").attr("value"));
        }
        assertEquals(List.of(), running.stores.checks().of(id));
    }

    @Test
    void an_empty_form_asks_for_every_answer_and_stores_nothing() {
        ClientId id = Cast.addWithProgram(running.stores, People.fitAndBored());

        Browser.Page page = browser.press(browser.get(at(id)), PRESS, Map.of());

        assertEquals(422, page.status());
        assertEquals(DaySign.values().length + 1, page.texts(".errors li").size());
        assertEquals(List.of(), running.stores.checks().of(id));
    }

    @Test
    void sugar_is_asked_of_those_who_take_such_medicine_and_decides() {
        ClientId id = Cast.addWithProgram(running.stores, onInsulin());
        Map<String, Object> typed = well();
        typed.put("today-helped", "no");
        typed.put("today-alone", "no");
        typed.put("today-sugar", "4,5");
        typed.put("today-sugar-unit", "mmol-l");

        Browser.Page page = browser.press(browser.get(at(id)), PRESS, typed);

        assertEquals("Go, and mind this.", page.text(".box .alarm-words"));
        assertEquals(
                List.of("Blood sugar 4.5 mmol/L: 15 to 30 g of fast carbohydrate before the start."),
                page.texts(".box li"));
        typed.put("today-sugar", "90");
        Browser.Page refused = browser.press(browser.get(at(id)), PRESS, typed);
        assertEquals(422, refused.status());
        assertEquals(List.of("Give the blood sugar from 1 to 34 mmol/L."), refused.texts(".errors li"));
        assertEquals(
                0,
                browser.get(at(Cast.add(running.stores, People.fitAndBored())))
                        .html()
                        .select("#today-sugar")
                        .size());
    }

    @Test
    void a_check_of_another_client_is_not_found() {
        ClientId one = Cast.addWithProgram(running.stores, People.fitAndBored());
        ClientId other = Cast.add(running.stores, People.outOfBreath());
        browser.press(browser.get(at(one)), PRESS, well());
        String check = running.stores.checks().of(one).getFirst().id();

        assertEquals(200, browser.get(at(one) + "/" + check).status());
        assertEquals(404, browser.get(at(other) + "/" + check).status());
    }

    private static Client onInsulin() {
        Client c = People.fitAndBored();
        ReadinessAnswers r = c.readiness();
        ReadinessAnswers answers = new ReadinessAnswers(
                r.regularExercise(),
                Answers.onlyYes(Disease.class, Disease.DIABETES),
                r.symptoms(),
                r.redFlags(),
                Answer.NO,
                Answer.YES,
                r.symptomsCleared(),
                r.pulseLoweringMedicine(),
                r.pulseGuards(),
                Answer.YES,
                People.TODAY);
        return new Client(
                c.id(), c.profile(), c.home(), c.wishes(), answers, c.falls(), c.vitals(), c.measures(), List.of());
    }

    private static String at(ClientId id) {
        return "/clients/" + id.value() + "/today";
    }
}
