package newel.program;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.WEDNESDAY;
import static newel.Shipped.CATALOGUE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import newel.People;
import newel.Shipped;
import newel.catalogue.Dose;
import newel.client.Client;
import newel.compose.Item;
import newel.compose.Session;
import org.junit.jupiter.api.Test;

class WeekEditTest {
    private static final Client PERSON = People.fitAndBored();
    private static final Editing EDITING = new Editing(CATALOGUE, Shipped.suiting(PERSON));
    private static final Session WHOLE =
            Shipped.drafted(PERSON).sessions().values().iterator().next();
    private static final Item ITEM = WHOLE.blocks().get(1).items().getFirst();
    /** Without the item. */
    private static final Session LESS =
            WHOLE.map(items -> items.stream().filter(item -> !item.equals(ITEM)).toList());

    private static final Version WEEK = new Version(
            1,
            People.TODAY,
            "",
            new TreeMap<>(Map.of(MONDAY, WHOLE, WEDNESDAY, LESS, FRIDAY, WHOLE)),
            List.of(),
            Origin.UNKNOWN);

    private static WeekEdit.Made made(WeekEdit edit) {
        return assertInstanceOf(WeekEdit.Made.class, edit);
    }

    private static Set<DayOfWeek> changed(WeekEdit.Made made) {
        return WEEK.days().stream()
                .filter(day -> !made.sessions().get(day).equals(WEEK.session(day)))
                .collect(java.util.stream.Collectors.toSet());
    }

    @Test
    void an_item_changes_on_every_day_that_has_it_and_the_reason_names_the_days() {
        Dose less = new Dose(
                1, Math.max(1, ITEM.dose().repetitions() - 1), ITEM.dose().seconds());

        WeekEdit.Made made = made(WeekEdit.ofItem(
                WEEK, FRIDAY, ITEM.movement(), session -> EDITING.dose(session, ITEM.movement(), less)));

        assertEquals(Set.of(MONDAY, FRIDAY), changed(made));
        assertTrue(made.reason().endsWith(" On Monday, Friday only."), made.reason());
        assertEquals(
                less,
                made.sessions().get(MONDAY).item(ITEM.movement()).orElseThrow().dose());
    }

    @Test
    void what_is_added_comes_in_on_the_days_that_do_not_have_it() {
        int block = WHOLE.blocks().size() - 1;
        WeekEdit.Made made = made(WeekEdit.ofAddition(
                WEEK,
                WEDNESDAY,
                ITEM.movement(),
                session -> EDITING.add(
                        session, Math.min(block, session.blocks().size() - 1), Shipped.variant(ITEM.variant()), "")));

        assertEquals(Set.of(WEDNESDAY), changed(made));
    }

    @Test
    void what_is_refused_on_the_day_that_is_shown_is_refused_for_the_week() {
        Item first = WHOLE.blocks().getFirst().items().getFirst();

        WeekEdit edit =
                WeekEdit.ofItem(WEEK, MONDAY, first.movement(), session -> EDITING.move(session, first.movement(), -1));

        assertInstanceOf(WeekEdit.Refused.class, edit);
    }
}
