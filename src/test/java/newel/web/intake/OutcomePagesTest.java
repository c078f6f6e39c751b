package newel.web.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import newel.People;
import newel.casefile.Demo;
import newel.client.ClientId;
import newel.practice.Settings;
import newel.screen.Choices;
import newel.screen.Permission;
import newel.screen.RestSet;
import newel.screen.Screening;
import newel.screen.Urgency;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Served;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** From the questions of an intake to an emergency, a same-day and a routine outcome, each as the instructor sees it. */
class OutcomePagesTest extends Served {
    private ClientId id;

    @BeforeEach
    void start() {
        running.stores.practice().save(Demo.settings());
        id = Cast.add(running.stores, People.fitAndBored());
    }

    @Test
    void an_emergency_interrupts_the_intake_with_the_number_and_stays_on_every_page() {
        String call = "Emergency: call " + Demo.settings().country().emergencyNumber() + " now";

        Browser.Page page = answer(Map.of("readiness-flag-chest-pain-now", "yes"));

        assertEquals("/clients/" + id.value() + "/intake/urgent", page.path());
        assertEquals(call, page.html().select("main > *").first().select("h1").text());
        assertEquals(
                List.of("Chest pain or pressure at rest, or that does not go within minutes of stopping."),
                page.texts(".alarm li"));
        Browser.Page check = browser.get("/clients/" + id.value() + "/intake/check");
        assertEquals(
                call,
                check.html().select("main > *").first().select(".alarm-words").text());
        Browser.Page client = browser.press(check, "Finish the intake", Map.of());
        assertEquals(call, client.html().select("main > .alarm .alarm-words").text());
        for (String place : List.of("", "/program", "/today", "/falls", "/pain")) {
            assertEquals(
                    call,
                    browser.get("/clients/" + id.value() + place)
                            .html()
                            .select("main > *:not(.note)")
                            .first()
                            .select(".alarm-words")
                            .text(),
                    place);
        }
        assertEquals(Urgency.EMERGENCY, screening().urgency().orElseThrow());
        assertEquals(Permission.NOTHING, screening().permission());
    }

    @Test
    void one_swollen_leg_and_breathlessness_lying_flat_are_an_emergency_together() {
        Browser.Page page = answer(Map.of(
                "readiness-flag-one-leg-swelling", "yes",
                "readiness-sign-breathless-lying", "yes"));

        assertEquals(
                List.of(
                        "One leg swollen and any breathlessness or chest pain: an emergency.",
                        "One leg or calf swollen, warm, red or sore."),
                page.texts(".alarm li"));
        assertTrue(page.text(".alarm h1").startsWith("Emergency"));
    }

    @Test
    void one_swollen_leg_alone_is_for_a_doctor_today() {
        Browser.Page page = answer(Map.of("readiness-flag-one-leg-swelling", "yes"));

        assertEquals("A doctor or an urgent clinic today", page.text(".alarm h1"));
        browser.press(browser.get("/clients/" + id.value() + "/intake/check"), "Finish the intake", Map.of());
        Browser.Page client = browser.get("/clients/" + id.value());
        assertEquals("No exercise. A doctor or an urgent clinic today", client.text(".client-header .state"));
        assertEquals(List.of(), client.texts("main > .alarm"));
        assertEquals(Urgency.SAME_DAY, screening().urgency().orElseThrow());
    }

    @Test
    void both_ankles_swollen_wait_for_a_clinician_and_the_intake_goes_on() {
        Browser.Page page = answer(Map.of("readiness-sign-ankle-swelling", "yes", "readiness-regular", "no"));

        assertEquals("/clients/" + id.value() + "/intake/limitations", page.path());
        browser.press(browser.get("/clients/" + id.value() + "/intake/check"), "Finish the intake", Map.of());
        Browser.Page client = browser.get("/clients/" + id.value());
        assertEquals("Waits for a doctor or another clinician", client.text(".client-header .state"));
        assertEquals(Urgency.ROUTINE, screening().urgency().orElseThrow());
        assertEquals(Permission.PREPARE, screening().permission());
    }

    @Test
    void a_clearance_that_lies_in_the_future_is_refused() {
        Browser.Page page = answer(Map.of(
                "readiness-cleared", "yes",
                "readiness-cleared-on-day", "4",
                "readiness-cleared-on-month", "3",
                "readiness-cleared-on-year", "2026"));

        assertEquals(422, page.status());
        assertEquals(List.of("Check the day of the clearance: it lies in the future."), page.texts(".errors li"));
    }

    @Test
    void a_pacemaker_keeps_the_target_pulse_away_and_says_why() {
        Browser.Page before = browser.get("/clients/" + id.value());
        assertTrue(before.text("[aria-labelledby=how-hard]").contains(" beats a minute"));
        answer(Map.of("readiness-guard-pacemaker", "yes"));
        browser.press(browser.get("/clients/" + id.value() + "/intake/check"), "Finish the intake", Map.of());

        Browser.Page after = browser.get("/clients/" + id.value());

        assertTrue(!after.text("[aria-labelledby=how-hard]").contains(" beats a minute"));
        assertEquals(List.of("A pacemaker or a defibrillator."), after.texts("[aria-labelledby=how-hard] .because li"));
    }

    @Test
    void a_practice_that_chose_another_list_holds_by_it() {
        Map<String, Object> pressure = Map.of(
                "readiness-systolic", "150",
                "readiness-diastolic", "104",
                "readiness-feels", "no");
        answer(pressure);
        browser.press(browser.get("/clients/" + id.value() + "/intake/check"), "Finish the intake", Map.of());
        assertEquals("No exercise today", browser.get("/clients/" + id.value()).text(".client-header .state"));

        running.stores.practice().save(withRest(RestSet.HEART_FAILURE));

        assertTrue(browser.get("/clients/" + id.value())
                .text(".client-header .state")
                .startsWith("May start"));
    }

    private static Settings withRest(RestSet set) {
        Settings s = Demo.settings();
        return new Settings(
                s.name(),
                s.address(),
                s.phone(),
                s.email(),
                s.country(),
                s.instructor(),
                new Choices(set, s.choices().fallsSet(), s.choices().painZones()),
                s.consensus());
    }

    private Browser.Page answer(Map<String, ?> changes) {
        return browser.press(
                browser.get("/clients/" + id.value() + "/intake/readiness"), "Keep and go on", new HashMap<>(changes));
    }

    private Screening screening() {
        return Screening.of(running.stores.clients().find(id).orElseThrow());
    }
}
