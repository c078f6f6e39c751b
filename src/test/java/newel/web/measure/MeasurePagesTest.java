package newel.web.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import newel.People;
import newel.body.Side;
import newel.client.Aid;
import newel.client.Client;
import newel.client.ClientId;
import newel.client.Done;
import newel.client.Experience;
import newel.client.Measure;
import newel.client.Measured;
import newel.client.Part;
import newel.client.Profile;
import newel.client.Quantity;
import newel.client.Unit;
import newel.client.Vitals;
import newel.client.Wishes;
import newel.web.Browser;
import newel.web.Cast;
import newel.web.Served;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Tests in the home, for a woman of 73 with nothing measured. Today is 3 March 2026. */
class MeasurePagesTest extends Served {
    private static final LocalDate DAY = LocalDate.of(2026, 2, 20);
    private static final LocalDate BEFORE = LocalDate.of(2025, 11, 18);

    private ClientId id;
    private String measures;

    @BeforeEach
    void start() {
        id = Cast.add(running.stores, unmeasured(People.painfulShoulder()));
        measures = "/clients/" + id.value() + "/measures";
    }

    @Test
    void the_clients_page_leads_to_measures_and_an_empty_page_teaches_the_next_act() {
        Browser.Page client = browser.get("/clients/" + id.value());
        assertEquals(
                List.of(measures),
                client.html().select(".places a:matchesOwn(^Measures$)").eachAttr("href"));

        Browser.Page page = browser.get(measures);

        assertEquals(0, page.html().select(".measure").size());
        assertTrue(page.text("main").contains("Nothing was measured yet. Choose a test below"));
        assertEquals(Measure.values().length, page.html().select(".tests a").size());
    }

    @Test
    void every_test_says_how_it_is_run_when_to_stop_and_what_it_is_held_against() {
        List<String> without = browser.get(measures).html().select(".tests a").eachAttr("href").stream()
                .map(browser::get)
                .filter(test -> {
                    assertEquals(200, test.status());
                    List<String> heads = test.texts(".run h3");
                    assertTrue(
                            heads.containsAll(List.of("Not for", "Stop", "Set it up", "Say", "Watch and count")),
                            test.path());
                    assertTrue(test.text(".run").contains("Stop at chest pain"), test.path());
                    assertTrue(test.html().select("#figures ~ .verdicts > li").size() > 0, test.path());
                    assertTrue(test.text("#figures ~ .standing").contains("Needs a clinician's sign-off"));
                    return test.html().select(".test-pictures .picture").isEmpty();
                })
                .map(test -> test.text("h1"))
                .toList();

        assertEquals(List.of("Back scratch"), without, "no picture of the catalogue shows it");
    }

    @Test
    void the_four_square_step_is_not_for_a_client_alone_at_home() {
        Browser.Page page = browser.get(measures + "/four-square-step");

        assertTrue(page.text(".run").contains("Not for unsupervised home use (design choice)"));
        assertEquals(
                "Anyone alone at home.",
                page.texts(".run div:has(h3:matchesOwn(^Not for$)) li").getFirst());
    }

    @Test
    void a_result_is_kept_and_shown_with_its_band_source_and_standing() {
        Browser.Page kept = enter("chair-stand-30s", Map.of("value", "9"));

        assertEquals(measures, kept.path());
        assertEquals("Kept: 30-second chair stand.", kept.text(".note p"));
        assertEquals(List.of(new Measured(Measure.CHAIR_STAND_30S, 9, People.TODAY)), stored());
        assertEquals("9 stands on 3 March 2026", kept.text(".score"));
        assertEquals(List.of("Below the usual range"), kept.texts(".bands .tag"));
        assertEquals(
                List.of(
                        "Look Below the usual range. 10 to 15 stands (25th to 75th centile), women 70-74",
                        "Look Below average: a sign of risk of falling. Flagged under 10 stands, women 70-74",
                        "Outside the zone that goes with losing mobility. Flagged under 8 stands",
                        "Look Under the standard for staying independent. Flagged under 14 stands, women 70-74"),
                kept.texts(".measure .verdicts li p:first-child"));
        assertTrue(kept.texts(".measure .verdicts .source")
                .getFirst()
                .startsWith("Rikli RE, Jones CJ 1999, J Aging Phys Act 7:162-181; Senior Fitness Test Manual"
                        + " 2001, 2nd ed. 2013 (partly read, partly from memory). About 7,180 North American"));
        assertEquals("Needs a clinician's sign-off", kept.text(".measure .standing"));
    }

    /** -4 in is -10.16 cm: the edge of the zone for women (Senior Fitness Test Manual). */
    @Test
    void the_same_length_in_inches_and_centimetres_is_judged_alike_and_shown_as_typed() {
        Map<String, String> left = Map.of("side", "left");
        Browser.Page inches = enter("back-scratch", with(left, "value", "-4", "unit", "inches"));
        assertEquals("-4 in on 3 March 2026", inches.text(".score"));
        List<String> bands = inches.texts(".bands .tag");

        Browser.Page centimetres = enter("back-scratch", with(left, "value", "-10,16", "unit", "centimetres"));

        assertEquals("-10.16 cm on 3 March 2026", centimetres.text(".score"));
        assertEquals(bands, centimetres.texts(".bands .tag"));
        assertEquals(
                List.of("Within the usual range", "In the zone that goes with losing mobility"),
                bands,
                "the limit counts as within; at the edge counts as in the zone");
        assertEquals(
                List.of("-10.15 cm on 3 March 2026"),
                enter("back-scratch", with(left, "value", "-10.15", "unit", "centimetres"))
                        .texts(".score"));
        assertEquals(List.of("Within the usual range"), browser.get(measures).texts(".bands .tag"));
    }

    @Test
    void stands_with_the_arms_score_nothing_and_what_could_not_be_done_is_no_number() {
        Browser.Page arms = enter("chair-stand-30s", Map.of("value", "6", "arms", "yes"));
        assertEquals("6 stands, which is 0 stands on 3 March 2026", arms.text(".score"));
        assertEquals(List.of("Below the usual range"), arms.texts(".bands .tag"));

        Browser.Page unable = enter("up-and-go-3m", Map.of("value", "", "unable", "yes", "aid", "stick"));

        assertEquals("Could not be done on 3 March 2026", unable.text("#up-and-go-3m .score"));
        assertEquals("With walking stick.", unable.text("#up-and-go-3m .measure-now > .soft"));
        assertEquals(
                "Slower than average for this age",
                unable.texts("#up-and-go-3m .bands .tag").getFirst());
        assertEquals(
                List.of("could not"),
                unable.html().select("#up-and-go-3m .plot .figure").eachText());
    }

    @Test
    void a_battery_is_taken_down_in_parts_and_its_course_is_kept_with_it() {
        Browser.Page kept = enter(
                "sppb",
                Map.of(
                        "part-side-by-side", "10",
                        "part-semi-tandem", "10",
                        "part-tandem", "2.5",
                        "part-course", "3",
                        "part-walk", "4.82",
                        "part-stands", "13.7"));

        // 3 m: 4.66 to 6.52 s earns 2; over 4 m the same time would earn 3 (Guralnik et al. 1994, 2000).
        assertEquals("6 points on 3 March 2026", kept.text(".score"));
        assertEquals(
                "Feet side by side 10 s; one foot half ahead 10 s; heel to toe 2.5 s; length of the walk 3 m; time of"
                        + " the walk 4.82 s; time for five chair stands 13.7 s.",
                kept.text(".measure-now > .soft"));
        assertEquals("3", stored().getFirst().part(Part.COURSE).orElseThrow().toPlainString());
    }

    static Stream<Arguments> slips() {
        return Stream.of(
                Arguments.of(
                        "chair-stand-30s",
                        Map.of("value", ""),
                        "Give the result as a whole number from 0 to 60 stands."),
                Arguments.of(
                        "chair-stand-30s",
                        Map.of("value", "9.5"),
                        "Give the result as a whole number from 0 to 60 stands."),
                Arguments.of(
                        "chair-stand-30s",
                        Map.of("value", "61"),
                        "Give the result as a whole number from 0 to 60 stands."),
                Arguments.of(
                        "chair-stand-30s",
                        Map.of("value", "nine"),
                        "Give the result as a whole number from 0 to 60 stands."),
                Arguments.of(
                        "chair-stand-30s",
                        Map.of("value", "9", "unable", "yes"),
                        "Leave the result empty, or take away the mark that it could not be done."),
                Arguments.of(
                        "chair-stand-30s",
                        Map.of("value", "9", "on-day", "4", "on-month", "3", "on-year", "2026"),
                        "Check the day of the test: it lies in the future."),
                Arguments.of(
                        "chair-stand-30s",
                        Map.of("value", "9", "on-day", "30", "on-month", "2", "on-year", "2026"),
                        "Check the day of the test: there is no such day. Write it like 27 3 1948."),
                Arguments.of("grip", Map.of("value", "20", "side", "left"), "Say what it was measured in."),
                Arguments.of("grip", Map.of("value", "20", "unit", "kilograms"), "Choose the side."),
                Arguments.of(
                        "grip",
                        Map.of("value", "95", "unit", "kilograms", "side", "left"),
                        "Give the result from 0 to 90 kg."),
                Arguments.of(
                        "four-stage-balance",
                        Map.of(),
                        "Give the seconds of the first stand; 0 when it could not be held."),
                Arguments.of(
                        "four-stage-balance",
                        Map.of("part-side-by-side", "8", "part-semi-tandem", "10"),
                        "Leave this stand empty: the one before it was not held for 10 seconds."),
                Arguments.of(
                        "sppb", Map.of("part-side-by-side", "10", "part-walk", "5"), "Say how long the walk was."));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("slips")
    void a_slip_is_told_in_a_sentence_and_what_was_typed_is_kept(
            String test, Map<String, String> typed, String sentence) {
        Browser.Page refused = enter(test, typed);

        assertEquals(422, refused.status());
        assertEquals(List.of(sentence), refused.texts(".errors li"));
        String field = refused.html().select(".errors a").attr("href").substring(1);
        assertTrue(refused.html().getElementById(field) != null, "the error leads to " + field);
        typed.forEach((name, value) -> assertEquals(value, shown(refused, name), name));
        assertEquals(List.of(), stored());
    }

    @Test
    void the_plot_shows_every_result_over_the_range_and_tells_the_same_as_its_table() {
        add(new Measured(Measure.CHAIR_STAND_30S, 9, BEFORE));
        add(new Measured(Measure.CHAIR_STAND_30S, 11, DAY));

        Browser.Page page = browser.get(measures);

        assertEquals("30-second chair stand over time", page.text(".plot title"));
        assertEquals(
                "18 Nov 25: 9 stands; 20 Feb 26: 11 stands. Higher is better. The band is the usual range for the age"
                        + " on each day.",
                page.text(".plot desc"));
        assertEquals("img", page.html().select(".plot").attr("role"));
        assertEquals(
                "chair-stand-30s-plot chair-stand-30s-told",
                page.html().select(".plot").attr("aria-labelledby"));
        assertEquals(2, page.html().select(".plot .dot").size());
        assertEquals(List.of("9", "11"), page.texts(".plot .figure"));
        assertTrue(page.html().select(".plot .band").size() >= 1);
        assertEquals(List.of("A", "B"), page.texts(".plot .letter"));
        assertEquals(
                List.of(
                        "20 February 2026 11 stands Within the usual range",
                        "18 November 2025 9 stands Below the usual range"),
                page.html().select(".course tbody tr").stream()
                        .map(row -> row.select("td:not(.no-paper)").text())
                        .toList());
        assertEquals(0, page.html().select("[style], script:not([src])").size());
    }

    /** Perera et al. 2006: 0.05 m/s is a small change that means something. */
    @Test
    void a_change_is_held_against_the_published_one_where_there_is_one() {
        add(new Measured(Measure.WALK_4M, 5.1, BEFORE));
        add(new Measured(Measure.WALK_4M, 4.55, DAY));
        add(new Measured(Measure.CHAIR_STAND_30S, 9, BEFORE));
        add(new Measured(Measure.CHAIR_STAND_30S, 9, DAY));

        Browser.Page page = browser.get(measures);

        assertTrue(page.text("#walk-4m")
                .contains("Better since 18 November 2025 (5.1 s, which is 0.784 m/s), +0.095 m/s. A small change that"
                        + " means something (Perera S et al. 2006, J Am Geriatr Soc 54:743-749, from memory)."));
        assertTrue(page.text("#chair-stand-30s").contains("No change since 18 November 2025 (9 stands)."));
    }

    @Test
    void outside_the_ages_of_a_norm_no_figure_is_made_up() {
        Client young = unmeasured(People.painfulShoulder());
        Profile p = young.profile();
        ClientId other = Cast.add(
                running.stores,
                changed(
                        young,
                        new Profile(
                                p.name(),
                                LocalDate.of(1967, 5, 1),
                                p.sex(),
                                p.statureCm(),
                                p.massKg(),
                                p.textSize(),
                                null,
                                null),
                        List.of(new Measured(Measure.CHAIR_STAND_30S, 9, DAY))));

        Browser.Page page = browser.get("/clients/" + other.value() + "/measures");

        assertEquals(
                List.of(
                        "No published figure for this age. No figure for this age; none is made up.",
                        "No published figure for this age. No figure for this age; none is made up.",
                        "Outside the zone that goes with losing mobility. Flagged under 8 stands",
                        "No published figure for this age. No figure for this age; none is made up."),
                page.texts(".measure .verdicts li p:first-child"));
        assertEquals(0, page.html().select(".plot .band").size());
    }

    @Test
    void a_result_can_be_taken_back_and_this_be_undone() {
        add(new Measured(Measure.CHAIR_STAND_30S, 9, BEFORE));
        Browser.Page kept = enter("chair-stand-30s", Map.of("value", "60"));

        Browser.Page back = browser.press(kept, "Undo", Map.of());

        assertEquals("The result is taken back.", back.text(".note p"));
        assertEquals("9 stands on 18 November 2025", back.text(".score"));
        Browser.Page again = browser.press(back, "Undo", Map.of());
        assertEquals("60 stands on 3 March 2026", again.text(".score"));
        Browser.Page gone = browser.press(again, "Take back 30-second chair stand of 18 November 2025", Map.of());
        assertEquals(1, gone.html().select(".course tbody tr").size());
    }

    @Test
    void what_is_not_there_is_not_found_and_another_clients_result_is_not_touched() {
        ClientId other = Cast.add(running.stores, unmeasured(People.fitAndBored()));
        String key = running.stores.measured().add(other, new Measured(Measure.GRIP, 30, DAY));
        String token =
                browser.get(measures + "/grip").html().select("[name=_token]").attr("value");

        assertEquals(404, browser.get(measures + "/juggling").status());
        assertEquals(404, browser.get("/clients/nobody/measures").status());
        assertEquals(
                404,
                browser.post(measures + "/results/" + key + "/back", "_token=" + token)
                        .status());
        assertEquals(
                1, running.stores.clients().find(other).orElseThrow().measures().size());
        assertEquals(403, browser.post(measures + "/grip", "value=20").status(), "without a token");
    }

    @Test
    void where_nothing_may_go_on_no_test_is_asked_for() {
        Client c = unmeasured(People.painfulShoulder());
        // 200/115 is held by every list of holds at rest.
        ClientId held = Cast.add(
                running.stores,
                new Client(
                        c.id(),
                        c.profile(),
                        c.home(),
                        c.wishes(),
                        c.readiness(),
                        c.falls(),
                        Vitals.of(200, 115, 72),
                        List.of(),
                        c.limitations()));
        ClientId waits = Cast.add(running.stores, People.mustBeReferred());

        for (String path : List.of("", "/chair-stand-30s")) {
            Browser.Page page = browser.get("/clients/" + held.value() + "/measures" + path);
            assertTrue(page.text(".box").startsWith("Do not test now. A test is exercise too."), page.text(".box"));
        }
        assertTrue(browser.get("/clients/" + waits.value() + "/measures/step-2min")
                .text(".box")
                .startsWith("Wait with tests that make the client breathe harder."));
        assertEquals(0, browser.get(measures).html().select(".box").size());
    }

    @Test
    void results_say_where_to_begin_and_a_draft_follows_them() {
        Client regular = unmeasured(People.painfulShoulder());
        ClientId weak = Cast.add(
                running.stores,
                new Client(
                        regular.id(),
                        regular.profile(),
                        regular.home(),
                        new Wishes(
                                regular.wishes().goals(),
                                regular.wishes().minutes(),
                                regular.wishes().days(),
                                Experience.REGULAR),
                        regular.readiness(),
                        regular.falls(),
                        regular.vitals(),
                        List.of(
                                new Measured(Measure.CHAIR_STAND_30S, 7, DAY),
                                new Measured(
                                        Measure.ARM_CURL_30S,
                                        Quantity.of(18, Unit.CURLS),
                                        DAY,
                                        new Done(false, false, Side.LEFT, Aid.NONE))),
                        regular.limitations()));
        String client = "/clients/" + weak.value();

        assertEquals(
                List.of(
                        "Arms one step further than usual 30-second arm curl: above the usual range.",
                        "Hips the easy forms 30-second chair stand: below the usual range.",
                        "Legs the easy forms 30-second chair stand: below the usual range."),
                browser.get(client + "/measures").texts(".starts tbody tr"));
        Browser.Page program = browser.press(browser.get(client + "/program"), "Draft the program", Map.of());

        assertEquals(
                "Why this version: First program after intake. Easy forms to begin with for the legs, hips, because of the"
                        + " measures. 30-second chair stand: below the usual range.",
                program.text(".reason"));
    }

    /** What stands in a box, or which of several is chosen. */
    private static String shown(Browser.Page page, String name) {
        Element field = page.html().select("[name=" + name + "]").first();
        boolean several = List.of("radio", "checkbox").contains(field.attr("type"));
        return several ? page.html().select("[name=" + name + "][checked]").attr("value") : field.attr("value");
    }

    private Browser.Page enter(String test, Map<String, String> typed) {
        return browser.press(browser.get(measures + "/" + test), "Keep the result", typed);
    }

    private void add(Measured measured) {
        running.stores.measured().add(id, measured);
    }

    private List<Measured> stored() {
        return running.stores.clients().find(id).orElseThrow().measures();
    }

    private static Map<String, String> with(Map<String, String> some, String... pairs) {
        Map<String, String> all = new LinkedHashMap<>(some);
        for (int i = 0; i < pairs.length; i += 2) {
            all.put(pairs[i], pairs[i + 1]);
        }
        return all;
    }

    private static Client unmeasured(Client c) {
        return changed(c, c.profile(), List.of());
    }

    private static Client changed(Client c, Profile profile, List<Measured> measures) {
        return new Client(
                c.id(), profile, c.home(), c.wishes(), c.readiness(), c.falls(), c.vitals(), measures, c.limitations());
    }
}
