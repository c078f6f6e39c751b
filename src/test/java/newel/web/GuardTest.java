package newel.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import newel.People;
import newel.client.ClientId;
import org.junit.jupiter.api.Test;

class GuardTest extends Served {
    @Test
    void every_page_forbids_inline_scripts_and_styles_and_is_not_cached() {
        Browser.Page page = browser.get("/clients");

        assertEquals(
                "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; "
                        + "connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
                page.header("Content-Security-Policy"));
        assertEquals("nosniff", page.header("X-Content-Type-Options"));
        assertEquals("no-store", page.header("Cache-Control"));
        assertEquals(0, page.html().select("[style], style, script:not([src])").size());
    }

    @Test
    void cookies_are_same_site_and_out_of_reach_of_scripts() {
        String cookie = browser.get("/clients/new").header("Set-Cookie");

        assertTrue(cookie.contains("SameSite=Lax") && cookie.contains("HttpOnly"), cookie);
    }

    @Test
    void a_form_without_its_token_changes_nothing() {
        ClientId id = Cast.addWithProgram(running.stores, People.painfulShoulder());
        String program = "/clients/" + id.value() + "/program";

        Browser.Page refused = browser.post(program + "/items/hip-hinge/removal", "version=1");

        assertEquals(403, refused.status());
        assertEquals(
                1, running.stores.programs().of(id).orElseThrow().versions().size());
        Browser.Page allowed = browser.press(browser.get(program), "Compose again", java.util.Map.of());
        assertEquals(200, allowed.status());
        assertEquals(
                2, running.stores.programs().of(id).orElseThrow().versions().size());
    }

    @Test
    void what_is_not_there_says_what_to_do() {
        for (String path :
                new String[] {"/nowhere", "/clients/none", "/clients/none/program", "/clients/none/referrals"}) {
            Browser.Page page = browser.get(path);
            assertEquals(404, page.status(), path);
            assertEquals("There is nothing at this address", page.text("h1"), path);
        }
    }

    @Test
    void static_files_are_served_and_nothing_beside_them() {
        assertEquals(
                "text/css",
                browser.get("/static/css/base.css").header("Content-Type").split(";")[0]);
        assertEquals(200, browser.get("/static/fonts/OFL.txt").status());
        for (String path : new String[] {
            "/static/../newel/case.schema.json",
            "/static/%2e%2e/newel/case.schema.json",
            "/newel/case.schema.json",
            "/demo-data/odile-marchbanks.json"
        }) {
            Browser.Page page = browser.get(path);
            assertFalse(page.status() == 200, path);
        }
    }
}
