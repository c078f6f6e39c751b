package newel.web;

import java.util.List;
import newel.People;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every page by the rules of WCAG 2.2 AA that a program can check. */
class EveryPageIT extends InChromium {
    @ParameterizedTest(name = "{0} px")
    @ValueSource(ints = {1280, 390})
    void every_page_passes_axe_and_scrolls_only_downward(int width) {
        String id = add(People.painfulShoulder());
        String referred = add(People.mustBeReferred());
        String client = "/clients/" + id;
        List<String> paths = List.of(
                "/clients",
                "/clients/new",
                client,
                client + "/intake/home",
                client + "/intake/readiness",
                client + "/intake/limitations",
                client + "/intake/check",
                client + "/limitations/new",
                client + "/measures",
                client + "/measures/four-stage-balance",
                client + "/measures/back-scratch",
                client + "/today",
                client + "/falls",
                client + "/pain",
                client + "/program",
                client + "/program/items/hip-hinge",
                client + "/program/changes",
                client + "/program/handout",
                "/clients/" + referred + "/program",
                "/clients/" + referred + "/referrals",
                "/movements?q=towel&position=lying&kind=pulse",
                "/movements?client=" + id,
                "/movements/stance-hold",
                "/movements/overhead-press?client=" + id,
                "/movements/overhead-press/press-standing?client=" + id);
        passesAxeAndScrollsOnlyDownward(width, paths);
    }
}
