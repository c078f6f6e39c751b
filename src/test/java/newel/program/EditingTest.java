package newel.program;

import static newel.Shipped.CATALOGUE;
import static newel.Shipped.variant;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import newel.People;
import newel.Shipped;
import newel.catalogue.Dose;
import newel.catalogue.Position;
import newel.catalogue.Sides;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.compose.Block;
import newel.compose.How;
import newel.compose.Item;
import newel.compose.Session;
import newel.limit.Fit;
import newel.limit.Limit;
import newel.limit.Limits;
import newel.limit.Reason;
import newel.limit.Share;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The instructor changes the program of somebody who cannot stand. */
class EditingTest {
    private static final Client PERSON = People.cannotStand();
    private static final Session SESSION = Shipped.drafted(PERSON).firstSession();
    private static final Editing EDITING = new Editing(CATALOGUE, Shipped.suiting(PERSON));

    /** In the session already, and done standing: it does not fit. */
    private static final Variant SWAPPED = unfit(true);

    /** Not in the session, and done standing. */
    private static final Variant ADDED = unfit(false);

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "because", "  short  "})
    void what_does_not_fit_is_refused_without_a_written_reason(String tooLittle) {
        Edit.Refused swap =
                assertInstanceOf(Edit.Refused.class, EDITING.swap(SESSION, SWAPPED.movement(), SWAPPED, tooLittle));
        Edit.Refused add = assertInstanceOf(Edit.Refused.class, EDITING.add(SESSION, 1, ADDED, tooLittle));

        assertEquals(refusal(SWAPPED), swap.why());
        assertEquals(refusal(ADDED), add.why());
    }

    @Test
    void eight_letters_are_a_written_reason() {
        assertEquals(8, Editing.SHORTEST_REASON);
        assertInstanceOf(Edit.Made.class, EDITING.add(SESSION, 1, ADDED, "she asks"));
    }

    @Test
    void a_swap_with_a_written_reason_keeps_it_with_everything_it_goes_against() {
        Edit.Made made = made(EDITING.swap(SESSION, SWAPPED.movement(), SWAPPED, "  Stands at her rail with me  "));

        Item item = made.session().item(SWAPPED.movement()).orElseThrow();
        assertEquals(
                new Item(
                        SWAPPED.movement(),
                        SWAPPED.id(),
                        Share.WHOLE,
                        item.dose(),
                        How.CHOSEN,
                        List.of(),
                        reasons(SWAPPED),
                        "Stands at her rail with me"),
                item);
        assertTrue(made.reason().endsWith(", although it does not fit: Stands at her rail with me"), made.reason());
    }

    @Test
    void an_addition_with_a_written_reason_keeps_it_at_the_end_of_its_block() {
        Edit.Made made = made(EDITING.add(SESSION, 1, ADDED, "Stands at her rail with me"));

        Block block = made.session().blocks().get(1);
        assertEquals(
                SESSION.blocks().get(1).items(),
                block.items().subList(0, block.items().size() - 1));
        Item item = block.items().getLast();
        assertEquals(ADDED.id(), item.variant());
        assertEquals(ADDED.dose().beginner(), item.dose());
        assertEquals(reasons(ADDED), item.why());
        assertEquals("Stands at her rail with me", item.override());
    }

    @Test
    void what_fits_needs_no_reason_and_keeps_none() {
        for (Variant fitting : fitting()) {
            Edit.Made made = made(EDITING.swap(SESSION, fitting.movement(), fitting, "A reason nobody asked for"));

            Item item = made.session().item(fitting.movement()).orElseThrow();
            assertEquals("", item.override(), fitting.id());
            assertTrue(!made.reason().contains("although"), made.reason());
            assertEquals(List.of(), broken(item), fitting.id());
        }
    }

    @Test
    void a_movement_is_in_a_session_once() {
        Item there = SESSION.items().toList().getFirst();
        Item other = SESSION.items().toList().get(1);
        String why = CATALOGUE.movement(there.movement()).orElseThrow().name()
                + " is in this session already. Swap or change it there.";

        assertEquals(new Edit.Refused(why), EDITING.add(SESSION, 0, variant(there.variant()), "She wants it twice"));
        assertEquals(
                new Edit.Refused(why),
                EDITING.swap(SESSION, other.movement(), variant(there.variant()), "She wants it twice"));
    }

    @Test
    void the_last_movement_stays() {
        Item only = SESSION.items().toList().getFirst();
        Session one = SESSION.map(
                items -> items.stream().filter(item -> item.equals(only)).toList());

        assertEquals(
                new Edit.Refused("A program keeps at least one movement. Swap this one instead."),
                EDITING.remove(one, only.movement()));
    }

    @Test
    void moved_later_and_then_earlier_everything_is_where_it_was() {
        List<Item> block = SESSION.blocks().getFirst().items();
        String first = block.getFirst().movement();

        Session later = made(EDITING.move(SESSION, first, 1)).session();

        assertEquals(block.getFirst(), later.blocks().getFirst().items().get(1));
        assertEquals(SESSION, made(EDITING.move(later, first, -1)).session());
        assertInstanceOf(Edit.Refused.class, EDITING.move(SESSION, first, -1));
    }

    @Test
    void a_dose_that_breaks_a_limit_is_refused_and_less_of_it_never_is() {
        Client standing = People.kneesAndPressure();
        Session session = Shipped.drafted(standing).firstSession();
        Item item = session.items()
                .filter(each -> variant(each.variant()).position() == Position.STANDING)
                .filter(each -> variant(each.variant()).sides() != Sides.EACH)
                .filter(each -> each.dose().repetitions() > 0 && each.dose().seconds() == 0)
                .filter(each -> 30 * variant(each.variant()).tempo().seconds() > 60)
                .findFirst()
                .orElseThrow();
        Limits limits = Limits.of(
                standing.limitations(), standing.homeLimits(), List.of(new Limit.Time(Limit.Lasting.STANDING, 60)));
        Editing editing = new Editing(
                CATALOGUE, new PersonSuiting(CATALOGUE, Shipped.ADAPTING, Shipped.FITTING, limits, Map.of()));
        int seconds = (int) Math.ceil(30 * variant(item.variant()).tempo().seconds());

        assertEquals(
                new Edit.Refused(
                        "This is too much: Stands for %d seconds; the limit is 60 (readiness and falls check). Choose less."
                                .formatted(seconds)),
                editing.dose(session, item.movement(), new Dose(1, 30, 0)));
        Session one =
                made(editing.dose(session, item.movement(), new Dose(1, 1, 0))).session();
        assertEquals(
                item.withDose(new Dose(1, 1, 0)).chosen(),
                one.item(item.movement()).orElseThrow());
    }

    @Test
    void from_the_end_of_a_block_it_goes_to_the_head_of_the_next_and_back() {
        Item last = SESSION.blocks().get(0).items().getLast();

        Session later = made(EDITING.move(SESSION, last.movement(), 1)).session();

        assertEquals(last, later.blocks().get(1).items().getFirst());
        assertEquals(
                SESSION.blocks().get(0).items().size() - 1,
                later.blocks().get(0).items().size());
        assertEquals(SESSION, made(EDITING.move(later, last.movement(), -1)).session());
        Item end = SESSION.blocks().getLast().items().getLast();
        assertEquals(
                new Edit.Refused(variant(end.variant()).name() + " is already at the end."),
                EDITING.move(SESSION, end.movement(), 1));
    }

    @Test
    void a_block_that_lost_its_only_movement_is_gone() {
        Block first = SESSION.blocks().getFirst();
        Block second = SESSION.blocks().get(1);
        Item alone = first.items().getFirst();
        Session two = new Session(List.of(first.withItems(List.of(alone)), second));

        Session moved = made(EDITING.move(two, alone.movement(), 1)).session();

        assertEquals(
                new Session(List.of(second.withItems(
                        Stream.concat(Stream.of(alone), second.items().stream()).toList()))),
                moved);
    }

    private static Edit.Made made(Edit edit) {
        return assertInstanceOf(Edit.Made.class, edit);
    }

    private static String refusal(Variant variant) {
        return "%s does not fit: %s Write why you want it all the same, or choose another."
                .formatted(variant.name(), String.join(" ", reasons(variant)));
    }

    private static List<String> reasons(Variant variant) {
        return texts(Shipped.suiting(PERSON)
                .broken(variant, Share.WHOLE, variant.dose().beginner()));
    }

    private static List<String> broken(Item item) {
        return texts(Shipped.suiting(PERSON).broken(variant(item.variant()), item.share(), item.dose()));
    }

    private static List<String> texts(List<Reason> reasons) {
        return reasons.stream().map(Reason::text).toList();
    }

    private static Variant unfit(boolean inSession) {
        return CATALOGUE.variants().stream()
                .filter(each -> SESSION.item(each.movement()).isPresent() == inSession)
                .filter(each -> Shipped.suiting(PERSON).fit(each) instanceof Fit.DoesNotFit)
                .findFirst()
                .orElseThrow();
    }

    /** Of each movement in the session, all other variants that fit, whole or trimmed. */
    private static List<Variant> fitting() {
        return CATALOGUE.variants().stream()
                .filter(each -> SESSION.item(each.movement())
                        .filter(item -> !item.variant().equals(each.id()))
                        .isPresent())
                .filter(each -> !(Shipped.suiting(PERSON).fit(each) instanceof Fit.DoesNotFit))
                .toList();
    }
}
