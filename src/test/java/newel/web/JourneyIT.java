package newel.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import com.microsoft.playwright.options.ReducedMotion;
import java.util.ArrayList;
import java.util.List;
import newel.People;
import newel.casefile.Demo;
import newel.client.Client;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The three flows walked by typing in a real browser, and the handout as it prints. */
class JourneyIT extends InChromium {
    @Test
    void a_picture_moves_when_asked_says_when_to_breathe_out_and_stops() {
        Page page = page(true, 390);
        page.navigate(running.address() + "/movements/towel-row/towel-row-seated-edge");
        Locator button = page.getByText("Show it moving");
        assertTrue(button.isVisible());

        button.click();
        page.waitForSelector(".moving svg polygon");
        String before = page.locator(".moving svg g").innerHTML();
        page.waitForFunction("was => document.querySelector('.moving svg g').innerHTML !== was", before);
        page.waitForSelector(".breath-out:has-text('Breathe out')");
        assertTrue(page.locator(".picture:not(.moving)").isHidden());

        page.getByText("Stop", new Page.GetByTextOptions().setExact(true)).click();
        assertEquals(0, page.locator(".moving").count());
        assertTrue(page.locator(".picture").isVisible());
    }

    @Test
    void nothing_is_offered_to_move_where_motion_is_unwanted() {
        Page page = page(true, 1280);
        page.emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
        page.navigate(running.address() + "/movements/towel-row/towel-row-seated-edge");

        assertTrue(page.locator("button[data-moves]").isHidden());
        assertTrue(page.locator(".picture").isVisible());
    }

    @ParameterizedTest(name = "scripts {0}")
    @ValueSource(booleans = {true, false})
    void from_intake_to_handout_to_the_regression_of_a_logged_limitation(boolean scripts) {
        Page page = page(scripts, 1280);

        // 1. An instructor builds a program after intake.
        intake(page);
        press(page, "Finish the intake");
        assertEquals("At a glance", page.locator("h1").textContent());
        page.locator(".places").getByText("Draft a program").click();
        press(page, "Draft the program");
        assertTrue(page.locator("h1").textContent().contains("Program"));
        page.waitForSelector(".foot");
        int items = page.locator(".item").count();
        assertTrue(items >= 8, "items " + items);
        press(page, "Make a link");
        String link = page.locator(".own-link").getAttribute("href");

        // 2. A client opens a printable handout, without the instructor's cookies.
        try (BrowserContext client =
                chromium.newContext(new Browser.NewContextOptions().setJavaScriptEnabled(scripts))) {
            Page handout = client.newPage();
            handout.navigate(running.address() + link);
            assertEquals("Exercises for Ida Fairweather", handout.locator("h1").textContent());
            assertTrue(handout.locator(".movement").count() >= items, "the movements of all days");
            assertTrue(handout.locator(".first").textContent().contains("Version 1, 3 March 2026"));
        }

        // 3. A trainer logs a limitation and swaps in the regression.
        page.navigate(running.address() + "/clients");
        page.getByText("Ida Fairweather").click();
        page.locator(".places").getByText("Log a limitation").click();
        check(page, "Cannot stand");
        check(page, "Both, or not about a side");
        check(page, "The client");
        press(page, "Log it");
        assertEquals("What no longer fits", page.locator("h1").textContent());
        int changes = page.locator(".change-pair").count();
        assertTrue(changes > 0);
        assertTrue(page.locator(".change-pair .because").first().textContent().contains("cannot stand"));
        press(page, "Make the next version");
        assertTrue(page.locator(".version").textContent().startsWith("Version 2, 3 March 2026"));
        page.getByText("Version 1", new Page.GetByTextOptions().setExact(true)).click();
        page.waitForSelector(".foot");
        assertEquals(items, page.locator(".item").count());
        page.navigate(running.address() + link);
        assertTrue(page.locator(".first").textContent().contains("Version 2, 3 March 2026"));
    }

    /** Emergency, same day and routine, each from the first question of the intake to the note that hands it over. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "flag-chest-pain-now | Emergency: call 999 now | Emergency: call first, this is the record",
                "flag-one-leg-swelling | A doctor or an urgent clinic today | Today",
                "sign-ankle-swelling | | Not urgent, within two weeks"
            })
    void from_intake_to_the_note_that_hands_it_over(String sign, String alarm, String urgency) {
        running.stores.practice().save(Demo.settings());
        Page page = page(true, 390);
        untilReadiness(page);
        page.locator("input[name=readiness-" + sign + "][value=yes]").check(new Locator.CheckOptions().setForce(true));
        press(page, "Keep and go on");

        if (alarm != null) {
            assertEquals(alarm, page.locator("main > *").first().locator("h1").textContent());
        } else {
            assertEquals(0, page.locator("main > .alarm").count());
        }
        page.navigate(page.url().replaceAll("/intake/.*", "/intake/check"));
        press(page, "Finish the intake");
        assertEquals(
                sign.contains("chest") ? 1 : 0, page.locator("main > .alarm").count());
        page.getByText("Referral notes").first().click();
        assertEquals(
                urgency,
                page.locator("label.option:has(input[name$=urgency]:checked)")
                        .textContent()
                        .strip());
        press(page, "Begin the note");
        assertTrue(
                page.locator("h1").textContent().contains("note"),
                page.locator("h1").textContent());
    }

    private void intake(Page page) {
        untilReadiness(page);
        press(page, "Keep and go on");
        press(page, "Keep and go on");
        assertEquals("Check and finish", page.locator("h1").textContent());
    }

    /** Everything answered, and every question of readiness with no. */
    private void untilReadiness(Page page) {
        page.navigate(running.address() + "/clients");
        page.getByText("New client").click();
        page.locator("#person-name").fill("Ida Fairweather");
        page.locator("[name=person-birth-day]").fill("27");
        page.locator("[name=person-birth-month]").fill("March");
        page.locator("[name=person-birth-year]").fill("1950");
        check(page, "Female");
        page.locator("#person-stature").fill("161");
        press(page, "Keep and go on");
        for (String kit : List.of("A firm chair", "A towel", "A free wall", "A kitchen counter")) {
            check(page, kit);
        }
        page.locator("#home-ceiling").fill("240");
        page.locator("#home-clear").fill("2,5");
        check(page, "No");
        press(page, "Keep and go on");
        check(page, "Get up from a chair");
        page.locator("#wishes-minutes").fill("25");
        for (String day : List.of("Monday", "Wednesday", "Friday")) {
            check(page, day);
        }
        check(page, "New to it, or long ago");
        press(page, "Keep and go on");
        for (Locator no : page.locator(".row input[value=no]").all()) {
            no.check(new Locator.CheckOptions().setForce(true));
        }
        page.locator("#readiness-falls").fill("0");
        page.locator("#readiness-systolic").fill("128");
        page.locator("#readiness-diastolic").fill("76");
        page.locator("#readiness-pulse").fill("70");
    }

    @Test
    void with_scripts_a_harder_step_is_taken_in_place() {
        String id = add(People.painfulShoulder());
        Page page = page(true, 1280);
        page.navigate(running.address() + "/clients/" + id + "/program");
        page.evaluate("document.querySelector('h1').ownerDocument.newelMark = 'same document'");

        page.locator(".step-act").first().click();
        page.locator(".version").getByText("Version 2").waitFor();

        assertEquals("same document", page.evaluate("document.newelMark"));
        assertTrue(page.locator(".note").textContent().contains("This is version 2."));
    }

    @Test
    void with_scripts_the_list_follows_what_is_typed_and_the_address_keeps_it() {
        Page page = page(true, 1280);
        page.navigate(running.address() + "/movements");
        page.evaluate("document.newelMark = 'same document'");

        page.locator("#q").pressSequentially("towel row");
        page.locator("h2").getByText("Best first").waitFor();
        page.locator("#position").selectOption("standing");
        page.locator(".taken-label").getByText("Position: standing").waitFor();

        assertEquals("same document", page.evaluate("document.newelMark"));
        assertEquals("towel row", page.locator("#q").inputValue());
        assertTrue(page.url().contains("q=towel+row") || page.url().contains("q=towel%20row"), page.url());
        assertEquals("Towel row", page.locator(".card h3").first().textContent());
        page.reload();
        assertEquals("standing", page.locator("#position").inputValue());
    }

    @Test
    void no_movement_of_a_printed_handout_is_taller_than_its_page() {
        // the shorter of A4 and Letter less the margins: 279.4 − 2 × 12 mm, at 96 px an inch; the narrower: 210 − 2 ×
        // 15 mm
        double tall = 255.4 / 25.4 * 96;
        int seen = 0;
        List<String> found = new ArrayList<>();
        for (Client person : People.all()) {
            String id = add(person);
            Page page = page(true, (int) (180 / 25.4 * 96));
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            page.navigate(running.address() + "/clients/" + id + "/program/handout");
            Object tooTall = page.locator(".movement")
                    .evaluateAll(
                            "(all, tall) => all.filter(e => e.getBoundingClientRect().height > tall"
                                    + " || getComputedStyle(e).breakInside !== 'avoid')"
                                    + ".map(e => e.querySelector('h3').textContent)",
                            tall);
            seen += page.locator(".movement").count();
            ((List<?>) tooTall).forEach(name -> found.add(person.profile().name() + ": " + name));
            context.close();
        }
        assertTrue(seen > 100, "movements " + seen);
        assertEquals(List.of(), found);
    }
}
