package newel.web.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.stream.Stream;
import newel.People;
import newel.Shipped;
import newel.client.Client;
import newel.client.ClientId;
import newel.compose.Item;
import newel.compose.Timing;
import newel.program.Version;
import newel.web.InChromium;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The instructor's hand: what she asks for is composed around at once, and what cannot be is named. */
class BriefIT extends InChromium {
    private String id;
    private Page page;

    @ParameterizedTest(name = "scripts {0}")
    @ValueSource(booleans = {true, false})
    void one_is_always_in_another_is_left_out_and_the_session_gets_shorter(boolean scripts) {
        open(People.painfulShoulder(), scripts);
        Version first = newest();
        List<String> rounds = first.firstSession().blocks().get(2).items().stream()
                .map(Item::movement)
                .toList();
        String pinned = rounds.get(0);
        String banned = rounds.get(1);

        reasons(pinned, "Always in");
        version(2);
        assertTrue(page.locator(".note").textContent().contains("always in"));
        assertTrue(everyDayHas(pinned));

        reasons(banned, "Leave it out, compose again");
        version(3);
        assertTrue(newest().item(banned).isEmpty());
        assertTrue(everyDayHas(pinned));

        page.locator("#brief > summary").click();
        page.locator("#brief-minutes").fill("15");
        press(page, "Compose again");
        version(4);
        Version shorter = newest();
        assertEquals(15, shorter.origin().brief().minutes());
        shorter.sessions()
                .values()
                .forEach(session -> assertTrue(new Timing(Shipped.CATALOGUE).session(session) <= 900));
        assertTrue(everyDayHas(pinned));
        assertTrue(shorter.item(banned).isEmpty());

        press(page, "Undo");
        version(5);
        assertEquals(first.origin().brief().minutes(), newest().origin().brief().minutes());
    }

    @Test
    void an_impossible_wish_is_named_with_what_it_clashes_with_and_the_nearest_session_is_made() {
        open(People.cannotStand(), true);

        page.locator("#brief > summary").click();
        page.locator("#brief-also-in").selectOption("suitcase-carry");
        press(page, "Compose again");
        version(2);

        String told = page.locator("[aria-labelledby=given-up]").textContent();
        String name = Shipped.CATALOGUE.movement("suitcase-carry").orElseThrow().name();
        assertTrue(told.contains("Given up: " + name + " in it."), told);
        assertTrue(told.contains("Needs a counter and a bag; there are none at home."), told);
        assertTrue(newest().item("suitcase-carry").isEmpty());
        assertTrue(page.locator(".item").count() >= 8, "a session all the same");
    }

    @Test
    void minutes_that_cannot_be_are_refused_and_stay_as_they_were_typed() {
        open(People.painfulShoulder(), true);

        page.locator("#brief > summary").click();
        page.locator("#brief-minutes").fill("three");
        press(page, "Compose again");
        page.locator("#brief-fault").waitFor();

        assertEquals(
                "Error: Minutes must be a whole number from 10 to 60.",
                page.locator("#brief-fault").textContent());
        assertEquals("three", page.locator("#brief-minutes").inputValue());
        assertEquals(1, newest().number());
    }

    @Test
    void every_item_says_why_it_is_here_and_what_came_next() {
        open(People.fitAndBored(), true);
        int items = page.locator(".item").count();

        assertEquals(items, page.locator(".item .reasons p:has-text('place')").count());
        assertEquals(items, page.locator(".item .reasons .points").count());
        assertTrue(page.locator(".proof").textContent().startsWith("Proved best"));
    }

    private void open(Client person, boolean scripts) {
        id = add(person);
        page = page(scripts, 1280);
        page.navigate(running.address() + "/clients/" + id + "/program");
    }

    private void reasons(String movement, String button) {
        Locator item = page.locator("[id='" + movement + "']");
        item.locator(".reasons > summary").click();
        item.locator("button", new Locator.LocatorOptions().setHasText(button)).click();
    }

    private void version(int number) {
        page.locator(".version").getByText("Version " + number + ",").waitFor();
        assertEquals(number, newest().number());
    }

    private Version newest() {
        return running.stores.programs().of(new ClientId(id)).orElseThrow().newest();
    }

    private boolean everyDayHas(String movement) {
        return Stream.of(newest()).allMatch(version -> version.days(movement).equals(version.days()));
    }
}
