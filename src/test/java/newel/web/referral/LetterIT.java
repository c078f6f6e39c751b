package newel.web.referral;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import newel.People;
import newel.casefile.Demo;
import newel.client.Client;
import newel.client.ClientId;
import newel.referral.Addressee;
import newel.referral.ClientCopy;
import newel.referral.Consent;
import newel.referral.Draft;
import newel.referral.Fact;
import newel.referral.Facts;
import newel.referral.Letter;
import newel.referral.Letters;
import newel.referral.Note;
import newel.referral.NoteId;
import newel.referral.Proposal;
import newel.referral.Stage;
import newel.screen.Screening;
import newel.screen.Urgency;
import newel.web.Cast;
import newel.web.InChromium;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Letters as they come out of a printer, and the pages around them by what axe can check. */
class LetterIT extends InChromium {
    private static final Pattern SHEET = Pattern.compile("/Type\\s*/Page[^s]");
    private static final LocalDate DAY = People.TODAY;

    private ClientId id;

    @BeforeEach
    void referred() {
        running.stores.practice().save(Demo.settings());
        id = Cast.add(running.stores, People.mustBeReferred());
    }

    @ParameterizedTest(name = "lines of {0} characters")
    @ValueSource(ints = {30, 90, 180, 270})
    void the_longest_letter_that_may_be_sent_fits_one_sheet(int characters) {
        Letter letter = longest(characters);

        assertTrue(letter.findings().size() > 1);
        assertEquals(1, sheets(sent(letter) + "/letter"));
    }

    @Test
    void a_letter_with_everything_about_each_of_the_cast_is_one_sheet_or_is_not_sent() {
        List<String> found = new ArrayList<>();
        for (Client person : People.all()) {
            List<Fact> facts = Facts.of(person, Screening.of(person), newel.assess.Guides.shipped());
            Letter letter = letter(person, facts, facts.size());
            int sheets = letter.fitsOnePage() ? sheets(sent(letter) + "/letter") : 1;
            if (sheets != 1) {
                found.add(person.profile().name() + ": " + sheets + " sheets");
            }
        }
        assertEquals(List.of(), found);
    }

    @Test
    void the_sources_print_with_no_rule_split_over_two_sheets() {
        Page page = page(true, 1280);
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(com.microsoft.playwright.options.Media.PRINT));
        page.navigate(running.address() + "/sources");

        assertEquals(
                List.of("avoid"),
                page.locator(".rule")
                        .evaluateAll("all => [...new Set(all.map(e => getComputedStyle(e).breakInside))]"));
        assertTrue(page.locator(".top").isHidden());
        assertTrue(page.locator(".known").isHidden());
    }

    @ParameterizedTest(name = "{0} px")
    @ValueSource(ints = {1280, 390})
    void every_page_passes_axe_and_scrolls_only_downward(int width) {
        String client = "/clients/" + id.value();
        NoteId drafted = running.stores.referrals().open(id, draft(List.of()), DAY);
        NoteId agreed = running.stores.referrals().open(id, draft(List.of()), DAY);
        running.stores.referrals().change(agreed, draft(List.of("told-falls")), consent());
        String sent = sent(longest(90));
        List<String> paths = List.of(
                "/clients",
                client,
                "/practice",
                "/practice/sign-off",
                "/sources",
                "/sources?known=from-memory",
                client + "/referrals",
                client + "/referrals/" + drafted.value(),
                client + "/referrals/" + agreed.value(),
                sent,
                sent + "/letter",
                sent + "/copy");
        passesAxeAndScrollsOnlyDownward(width, paths);
    }

    /** As many findings of that length as the rule allows. */
    private static Letter longest(int characters) {
        Client person = People.mustBeReferred();
        String text = String.join(" ", Collections.nCopies(characters / 6 + 1, "found"))
                        .substring(0, characters - 1) + ".";
        List<Fact> facts = new ArrayList<>();
        for (int i = 0; i < 80; i++) {
            facts.add(new Fact("fact-" + i, i % 2 == 0 ? Fact.Part.TOLD : Fact.Part.FOUND, text));
        }
        int most = 0;
        while (letter(person, facts, most + 1).fitsOnePage()) {
            most++;
        }
        return letter(person, facts, most);
    }

    private static Letter letter(Client person, List<Fact> facts, int ticked) {
        Note note = new Note(
                new NoteId("0192-abc123"),
                DAY,
                draft(facts.stream().limit(ticked).map(Fact::key).toList()),
                consent(),
                new Stage.Drafted());
        return Letters.write(note, person.profile(), facts, Optional.of(Demo.settings()), DAY);
    }

    private static Draft draft(List<String> ticked) {
        Draft first = Draft.of(Urgency.ROUTINE, Addressee.OWN_DOCTOR, Proposal.OWN);
        return new Draft(
                first.urgency(),
                first.to(),
                "Dr. Ines Halloran",
                "of what was answered when I asked about health before exercise",
                ticked,
                "Is light to moderate exercise at home safe for this person now, and is there anything they should not do?",
                "No exercise from us until your answer is there.",
                "");
    }

    private static Consent consent() {
        return new Consent.Given(
                "Gideon Larkspur",
                "the reason for this note and what is found in it",
                "own doctor",
                DAY,
                Consent.How.SPOKEN);
    }

    /** @return the path of a note that went out with this letter */
    private String sent(Letter letter) {
        NoteId note = running.stores.referrals().open(id, draft(List.of()), DAY);
        ClientCopy copy = ClientCopy.of(
                draft(List.of()), letter, People.mustBeReferred().profile(), Optional.of(Demo.settings()));
        running.stores.referrals().send(note, new Stage.Sent(DAY, Stage.Way.POST, letter, copy));
        return "/clients/" + id.value() + "/referrals/" + note.value();
    }

    private int sheets(String path) {
        Page page = page(true, 1280);
        page.navigate(running.address() + path);
        byte[] pdf = page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true));
        context.close();
        return (int) SHEET.matcher(new String(pdf, StandardCharsets.ISO_8859_1))
                .results()
                .count();
    }
}
