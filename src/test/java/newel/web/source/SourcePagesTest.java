package newel.web.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import newel.People;
import newel.limit.Presets;
import newel.practice.Rulebook;
import newel.practice.SignOff;
import newel.source.Known;
import newel.source.Statement;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Served;
import org.junit.jupiter.api.Test;

/** Every rule with its source, and who signed it off. */
class SourcePagesTest extends Served {
    private static final Rulebook BOOK = Shipped.rulebook(Presets.read());
    private static final String NEEDED = "Needs a clinician's sign-off";

    @Test
    void every_rule_stands_there_with_its_words_source_and_how_it_is_known() {
        Browser.Page page = browser.get("/sources");

        assertEquals(ids(BOOK), page.texts(".rule .rule-id"));
        assertEquals(BOOK.all().size(), page.texts(".rule .says").size());
        for (Statement each : BOOK.all()) {
            assertEquals(each.says(), page.text("[id='rule-" + each.rule().id() + "'] .says"));
            String cited = page.html()
                    .getElementById("rule-" + each.rule().id())
                    .select(".cited")
                    .text();
            assertTrue(
                    cited.contains(each.rule().citation().strip()), each.rule().id());
            assertTrue(
                    cited.endsWith("(" + each.rule().known().words() + ")"),
                    each.rule().id());
        }
        assertEquals(Set.of(NEEDED), Set.copyOf(page.texts(".rule .standing")));
        assertEquals("0 of %d rules are signed off.".formatted(BOOK.all().size()), page.text("main .box b"));
    }

    @Test
    void rules_can_be_narrowed_by_how_they_are_known() {
        Browser.Page page = browser.get("/sources?known=design-choice");

        assertEquals(ids(BOOK.only(Known.DESIGN_CHOICE)), page.texts(".rule .rule-id"));
        assertTrue(page.texts(".rule .rule-id").size() < BOOK.all().size());
        assertEquals("Design choice " + ids(BOOK.only(Known.DESIGN_CHOICE)).size(), page.text(".known [aria-current]"));
        assertEquals(ids(BOOK), browser.get("/sources?known=nonsense").texts(".rule .rule-id"));
    }

    @Test
    void a_rule_is_signed_off_by_name_and_the_others_are_not() {
        String id = BOOK.all().getFirst().rule().id();

        Browser.Page signed = sign(Map.of("rules", id));

        assertEquals("1 rule signed off by Ines Halloran, own doctor.", signed.text(".note p"));
        assertEquals(
                "Signed off by Ines Halloran, own doctor, 3 March 2026", signed.text("#rule-" + id + " .standing"));
        assertEquals(BOOK.all().size() - 1, count(signed, NEEDED));
        assertEquals("1 of %d rules are signed off.".formatted(BOOK.all().size()), signed.text("main .box b"));
    }

    @Test
    void all_rules_can_be_signed_off_at_once_and_the_result_says_so() {
        Browser.Page signed = sign(Map.of("every-rule", "yes"));
        assertEquals(0, count(signed, NEEDED));

        String client =
                "/clients/" + Cast.add(running.stores, People.mustBeReferred()).value();
        assertEquals(
                Set.of("Signed off by Ines Halloran, own doctor, 3 March 2026"),
                Set.copyOf(browser.get(client).texts(".sources .standing")));
    }

    @Test
    void beside_each_result_stands_that_its_rule_needs_a_sign_off() {
        String client =
                "/clients/" + Cast.add(running.stores, People.mustBeReferred()).value();

        List<String> standings = browser.get(client).texts(".sources li .standing");

        assertTrue(standings.size() > 1);
        assertEquals(Set.of(NEEDED), Set.copyOf(standings));
    }

    @Test
    void when_a_rule_says_something_else_its_sign_off_counts_no_more() {
        Statement rule = BOOK.all().getFirst();
        running.stores
                .signOffs()
                .add(List.of(new SignOff(
                        rule.rule().id(), "what it said before", "Ines Halloran", "own doctor", People.TODAY)));

        assertEquals(
                "Changed since Ines Halloran signed it on 3 March 2026: needs a clinician's sign-off again",
                browser.get("/sources").text("#rule-" + rule.rule().id() + " .standing"));
    }

    @Test
    void a_sign_off_is_taken_back_for_what_is_ticked() {
        sign(Map.of("every-rule", "yes"));
        String id = BOOK.all().getFirst().rule().id();

        browser.press(
                browser.get("/practice/sign-off"), "Take back the sign-off of what is ticked", Map.of("rules", id));

        Browser.Page page = browser.get("/sources");
        assertEquals(NEEDED, page.text("#rule-" + id + " .standing"));
        assertEquals(1, count(page, NEEDED));
        assertTrue(browser.get("/practice").text("#changes ~ ul").contains("The sign-off of 1 rule was taken back."));
    }

    @Test
    void a_sign_off_without_a_name_a_tick_or_a_rule_is_refused_and_what_was_typed_stays() {
        Browser.Page refused = browser.press(
                browser.get("/practice/sign-off"),
                "Sign off",
                Map.of("sign-role", "own doctor", "sign-on-year", "2027"));

        assertEquals(422, refused.status());
        assertEquals(
                List.of(
                        "Tick at least one rule, or every rule.",
                        "Type the name of the clinician.",
                        "Check the day: it lies in the future.",
                        "Tick that the clinician has read the rules."),
                refused.texts(".errors li"));
        assertEquals("own doctor", refused.html().select("#sign-role").attr("value"));
        assertEquals(List.of(), running.stores.signOffs().all().all());
    }

    private Browser.Page sign(Map<String, String> rules) {
        Map<String, String> typed = new java.util.HashMap<>(rules);
        typed.putAll(Map.of("sign-who", "Ines Halloran", "sign-role", "own doctor", "sign-read", "yes"));
        return browser.press(browser.get("/practice/sign-off"), "Sign off", typed);
    }

    private static List<String> ids(Rulebook book) {
        return book.bySubject().values().stream()
                .flatMap(List::stream)
                .map(each -> each.rule().id())
                .toList();
    }

    private static long count(Browser.Page page, String words) {
        return page.texts(".rule .standing").stream().filter(words::equals).count();
    }
}
