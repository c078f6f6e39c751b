package newel.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.TreeSet;
import newel.Shipped;
import org.junit.jupiter.api.Test;

class LinkDemandsTest {
    private static final Catalogue CATALOGUE = Shipped.CATALOGUE;

    @Test
    void every_link_of_the_catalogue_falls_on_its_axis_and_says_what_rises() {
        for (Movement movement : CATALOGUE.movements()) {
            for (LinkDemands each : LinkDemands.of(movement)) {
                assertEquals(true, each.fall().isPresent(), each::toString);
                assertEquals(new TreeSet<>(each.link().rises()), Rises.names(each.rises()), each::toString);
            }
        }
    }

    @Test
    void a_link_shows_the_demand_before_and_after() {
        List<String> lines = LinkDemands.of(CATALOGUE.movement("towel-row").orElseThrow()).stream()
                .map(LinkDemands::toString)
                .filter(line -> line.startsWith("towel-row-seated-edge"))
                .toList();

        assertEquals(List.of("towel-row-seated-edge → towel-row-seated-back (support): support none → full"), lines);
    }

    @Test
    void a_link_that_changes_nothing_falls_nowhere() {
        Movement row = CATALOGUE.movement("towel-row").orElseThrow();
        Doing same = Doing.of(row.variants().getFirst());

        for (Axis axis : Axis.values()) {
            assertEquals(true, new Falls(row, same, same).on(axis).isEmpty(), axis::toString);
        }
    }
}
