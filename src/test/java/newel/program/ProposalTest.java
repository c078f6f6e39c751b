package newel.program;

import static java.time.DayOfWeek.MONDAY;
import static newel.Shipped.CATALOGUE;
import static newel.Shipped.PRESETS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import newel.People;
import newel.Shipped;
import newel.catalogue.Dose;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.compose.Doses;
import newel.compose.How;
import newel.compose.Item;
import newel.compose.LeftOut;
import newel.compose.Session;
import newel.compose.Suiting;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.limit.Preset;
import newel.limit.Share;
import newel.limit.Sided;
import org.junit.jupiter.api.Test;

/** A limitation is logged on somebody with a program. */
class ProposalTest {
    @Test
    void for_everybody_and_every_preset_the_next_version_fits_and_the_rest_stays_as_it_was() {
        for (Client person : People.all()) {
            Session session = draft(person).firstSession();
            for (Preset preset : PRESETS.all()) {
                Suiting suiting = Shipped.suiting(with(person, preset));
                Proposal proposal = Proposal.of(CATALOGUE, week(session), suiting);
                Session next = proposal.applied(session);
                String who = person.profile().name() + " with " + preset.id();

                next.items()
                        .forEach(item -> assertEquals(
                                List.of(),
                                suiting.broken(Shipped.variant(item.variant()), item.share(), item.dose()),
                                who));
                Set<String> changed = proposal.replacements().stream()
                        .map(each -> each.before().movement())
                        .collect(Collectors.toSet());
                session.items()
                        .filter(item -> !changed.contains(item.movement()))
                        .forEach(item ->
                                assertEquals(item, next.item(item.movement()).orElseThrow(), who));
                proposal.replacements()
                        .forEach(each -> assertTrue(!each.reasons().isEmpty(), who));
                assertTrue(
                        Proposal.of(CATALOGUE, week(next), suiting).nothing(), who + ": not settled after one press");
            }
        }
    }

    @Test
    void a_frozen_shoulder_changes_something_and_what_has_to_go_is_named() {
        Version version = draft(People.kneesAndPressure());
        Suiting suiting = Shipped.suiting(
                with(People.kneesAndPressure(), PRESETS.find("frozen-shoulder").orElseThrow()));

        Proposal proposal = Proposal.of(CATALOGUE, version, suiting);

        assertTrue(!proposal.nothing());
        List<String> out = proposal.leftOut(version.leftOut()).stream()
                .map(LeftOut::movement)
                .toList();
        proposal.replacements().stream()
                .filter(each -> each.after().isEmpty())
                .forEach(each -> assertTrue(out.contains(each.before().movement())));
    }

    @Test
    void what_was_only_done_for_too_long_stays_with_a_smaller_dose() {
        Client person = People.fitAndBored();
        Session session = draft(person).firstSession();
        Suiting suiting = Shipped.suiting(with(person, limitation(new Limit.Time(Limit.Lasting.STANDING, 30))));

        List<Item> before = new ArrayList<>();
        for (Replacement each : Proposal.of(CATALOGUE, week(session), suiting).replacements()) {
            Item after = each.after().orElse(each.before());
            if (after.how() == How.SMALLER_DOSE) {
                before.add(each.before());
                Dose dose = each.before().dose();
                Dose beginner = Shipped.variant(after.variant()).dose().beginner();
                Dose less = new Dose(
                        1,
                        Math.min(dose.repetitions(), beginner.repetitions()),
                        Math.min(dose.seconds(), beginner.seconds()));
                assertEquals(
                        new Item(
                                each.before().movement(),
                                each.before().variant(),
                                Share.WHOLE,
                                less,
                                How.SMALLER_DOSE,
                                List.of(),
                                each.reasons(),
                                ""),
                        after);
                each.reasons().forEach(reason -> assertTrue(reason.startsWith("Stands for "), reason));
            }
        }
        assertTrue(!before.isEmpty(), "nobody stands for long in this program");
    }

    @Test
    void no_replacement_asks_for_more_than_before_or_than_its_beginners_dose() {
        for (Client person : People.all()) {
            Session session = draft(person).firstSession();
            for (Preset preset : PRESETS.all()) {
                Proposal.of(CATALOGUE, week(session), Shipped.suiting(with(person, preset))).replacements().stream()
                        .filter(each -> each.after().isPresent())
                        .filter(each ->
                                !each.after().get().dose().equals(each.before().dose()))
                        .forEach(each -> assertTrue(
                                !each.after()
                                        .get()
                                        .dose()
                                        .asksMoreThan(beginner(each.after().get())),
                                each.toString()));
            }
        }
    }

    private static Dose beginner(Item item) {
        Variant variant = Shipped.variant(item.variant());
        return Doses.beginner(variant, CATALOGUE.movementOf(variant).kind());
    }

    @Test
    void differences_name_what_came_what_went_and_what_changed() {
        Version first = week(draft(People.fitAndBored()).firstSession());
        Editing editing = new Editing(CATALOGUE, Shipped.suiting(People.fitAndBored()));
        Item one = first.firstSession().items().toList().get(0);
        Item two = first.firstSession().items().toList().get(1);
        Session removed = made(editing.remove(first.firstSession(), one.movement()));
        Session dosed = made(editing.dose(removed, two.movement(), new Dose(1, 99, 0)));

        List<Difference> differences =
                Difference.between(first, first.next(People.TODAY, "x", Version.on(Set.of(MONDAY), dosed)));

        assertEquals(
                List.of(
                        new Difference.Changed(
                                two, two.withDose(new Dose(1, 99, 0)).chosen()),
                        new Difference.Removed(one)),
                differences);
    }

    @Test
    void a_move_alone_is_a_difference_and_names_only_what_moved() {
        Version first = week(draft(People.fitAndBored()).firstSession());
        Editing editing = new Editing(CATALOGUE, Shipped.suiting(People.fitAndBored()));
        Item one = first.firstSession().items().toList().getFirst();
        Session once = made(editing.move(first.firstSession(), one.movement(), 1));
        Session twice = made(editing.move(once, one.movement(), 1));
        Item last = first.firstSession().blocks().getFirst().items().getLast();
        Session across = made(editing.move(first.firstSession(), last.movement(), 1));

        assertEquals(
                List.of(new Difference.Moved(one)),
                Difference.between(first, first.next(People.TODAY, "x", Version.on(Set.of(MONDAY), twice))));
        assertEquals(
                List.of(new Difference.Moved(last)),
                Difference.between(first, first.next(People.TODAY, "x", Version.on(Set.of(MONDAY), across))));
    }

    @Test
    void an_item_kept_with_a_reason_is_not_offered_for_replacement_until_it_breaks_something_new() {
        Client person = People.painfulShoulder();
        Session session = draft(person).firstSession();
        Editing editing = new Editing(CATALOGUE, Shipped.suiting(person));
        Edit refused = editing.swap(session, "push-up", Shipped.variant("push-chair-seat"), "");
        assertInstanceOf(Edit.Refused.class, refused);
        Session kept =
                made(editing.swap(session, "push-up", Shipped.variant("push-chair-seat"), "Wants it and does it well"));

        assertTrue(Proposal.of(CATALOGUE, week(kept), Shipped.suiting(person)).nothing());
        Suiting wrist = Shipped.suiting(with(person, PRESETS.find("wrist-pain").orElseThrow()));
        assertTrue(Proposal.of(CATALOGUE, week(kept), wrist).replacements().stream()
                .anyMatch(each -> each.before().movement().equals("push-up")));
    }

    @Test
    void a_swap_to_another_form_never_carries_over_more_than_its_beginners_dose() {
        Client person = People.fitAndBored();
        Session session = draft(person).firstSession();
        Item item = session.item("push-up").orElseThrow();
        Editing editing = new Editing(CATALOGUE, Shipped.suiting(person));
        Session many = made(editing.dose(session, "push-up", new Dose(1, 40, 0)));
        var other = Shipped.variant(item.variant().equals("push-wall-near") ? "push-wall-far" : "push-wall-near");

        Item swapped =
                made(editing.swap(many, "push-up", other, "")).item("push-up").orElseThrow();

        assertEquals(other.dose().beginner().repetitions(), swapped.dose().repetitions());
    }

    private static Session made(Edit edit) {
        return ((Edit.Made) edit).session();
    }

    private static Version draft(Client person) {
        return Shipped.drafted(person);
    }

    private static Limitation limitation(Limit limit) {
        return new Limitation(
                "new", "", "said", Sided.BOTH, Limitation.Source.CLIENT, People.TODAY, null, List.of(limit), List.of());
    }

    private static Client with(Client c, Preset preset) {
        return with(c, preset.limitation("new", "", Sided.RIGHT, Limitation.Source.CLIENT, People.TODAY, null));
    }

    private static Client with(Client c, Limitation limitation) {
        List<Limitation> more = new ArrayList<>(c.limitations());
        more.add(limitation);
        return new Client(
                c.id(), c.profile(), c.home(), c.wishes(), c.readiness(), c.falls(), c.vitals(), c.measures(), more);
    }

    private static Version week(Session session) {
        return new Version(1, People.TODAY, "", Version.on(Set.of(MONDAY), session), List.of(), Origin.UNKNOWN);
    }
}
