package newel.web.falls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import newel.People;
import newel.client.Answer;
import newel.client.ClientId;
import newel.client.FallsAnswers;
import newel.client.FallsItem;
import newel.screen.FallsScore;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Served;
import newel.web.form.Choice;
import org.junit.jupiter.api.Test;

class FallsPagesTest extends Served {

    @Test
    void the_questionnaire_is_kept_counted_and_changes_what_is_asked_next() {
        ClientId id = Cast.add(running.stores, People.fitAndBored());
        FallsAnswers before = running.stores.clients().find(id).orElseThrow().falls();
        Map<String, Object> typed = new HashMap<>();
        for (FallsItem item : FallsItem.values()) {
            typed.put("falls-" + Choice.of(item), "no");
        }
        typed.put("falls-aid", "yes");
        typed.put("falls-numb-feet", "yes");
        typed.put("falls-low-mood", "yes");

        Browser.Page page = browser.press(browser.get(at(id)), "Keep the questionnaire", typed);

        assertEquals("Risk: low", page.text("#level"));
        assertTrue(page.text("[aria-labelledby=level]").contains("Longer questionnaire: 4 of 14. At risk from 4."));
        assertTrue(page.text("[aria-labelledby=next]").contains("holding on with one hand"));
        assertTrue(page.text("[aria-labelledby=next]").contains("Look again in 30 to 90 days."));
        FallsAnswers after = running.stores.clients().find(id).orElseThrow().falls();
        assertEquals(new FallsScore(4, 0, true), FallsScore.of(after.items()));
        assertEquals(before, after.withItems(before.items()));
        assertEquals(Answer.YES, after.items().to(FallsItem.AID));
    }

    @Test
    void changing_the_intake_keeps_the_questionnaire() {
        ClientId id = Cast.add(running.stores, People.fitAndBored());
        browser.press(browser.get(at(id)), "Keep the questionnaire", Map.of("falls-fell", "yes", "falls-aid", "yes"));

        String intake = "/clients/" + id.value() + "/intake/";
        browser.press(browser.get(intake + "wishes"), "Keep and check all", Map.of("wishes-minutes", "30"));
        browser.press(browser.get(intake + "check"), "Finish the intake", Map.of());

        assertEquals(
                4,
                FallsScore.of(running.stores
                                .clients()
                                .find(id)
                                .orElseThrow()
                                .falls()
                                .items())
                        .points());
    }

    private static String at(ClientId id) {
        return "/clients/" + id.value() + "/falls";
    }
}
