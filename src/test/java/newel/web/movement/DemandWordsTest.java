package newel.web.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import newel.Shipped;
import newel.body.Joint;
import newel.catalogue.Link;
import newel.catalogue.LinkChange;
import newel.catalogue.Variant;
import newel.limit.Share;
import org.junit.jupiter.api.Test;

class DemandWordsTest {
    @Test
    void every_change_along_every_link_has_words_with_two_different_figures() {
        for (Variant harder : Shipped.CATALOGUE.variants()) {
            for (Link link : harder.easier()) {
                DemandWords.Form from = form(harder);
                DemandWords.Form to = form(Shipped.variant(link.easier()));
                LinkChange change = LinkChange.between(harder, from.demands(), to.variant(), to.demands());
                Set<String> names = new TreeSet<>(change.falls());
                names.addAll(change.rises());
                for (String name : names) {
                    String[] figures =
                            DemandWords.change(name, from, to).split(": ")[1].split(", then ");
                    assertEquals(2, figures.length, harder.id() + " " + name);
                    assertFalse(figures[0].equals(figures[1]), harder.id() + ": " + DemandWords.change(name, from, to));
                }
            }
        }
    }

    @Test
    void what_rises_is_what_the_link_says_of_itself() {
        for (Variant harder : Shipped.CATALOGUE.variants()) {
            for (Link link : harder.easier()) {
                DemandWords.Form from = form(harder);
                DemandWords.Form to = form(Shipped.variant(link.easier()));
                assertEquals(
                        new TreeSet<>(link.rises()),
                        new TreeSet<>(LinkChange.between(harder, from.demands(), to.variant(), to.demands())
                                .rises()),
                        harder.id() + " to " + link.easier());
            }
        }
    }

    @Test
    void a_load_is_told_beside_the_one_of_sitting_or_standing_quietly() {
        // the hip's quiet load is .02 of body weight times height
        assertEquals("no more than sitting or standing quietly", DemandWords.beside(Joint.HIP, .02));
        assertEquals("much like sitting or standing quietly", DemandWords.beside(Joint.HIP, .022));
        assertEquals("2.5 times sitting or standing quietly", DemandWords.beside(Joint.HIP, .05));
        assertEquals("5.00 %", DemandWords.load(.05));
    }

    @Test
    void a_link_that_is_about_support_says_from_what_to_what() {
        Variant edge = Shipped.variant("towel-row-seated-edge");
        Link link = edge.easier().getFirst();
        assertTrue(link.axis() == newel.catalogue.Axis.SUPPORT, "the case must hold what is tested");

        assertEquals(
                "Support: nothing to hold on to, then carried by a bed or back rest",
                DemandWords.axis(link.axis(), form(edge), form(Shipped.variant(link.easier()))));
    }

    private static DemandWords.Form form(Variant variant) {
        return new DemandWords.Form(variant, Shipped.DEMANDS.at(variant, Share.WHOLE));
    }
}
