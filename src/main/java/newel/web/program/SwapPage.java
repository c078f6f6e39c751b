package newel.web.program;

import java.util.List;
import newel.web.client.ClientHeader;
import newel.web.stair.Step;

/**
 * All that could stand in the place of one item, or be added to a part.
 *
 * @param base the program's page at the day that is meant
 * @param day that day as it stands in an address
 */
public record SwapPage(
        ClientHeader header,
        String base,
        int number,
        String day,
        String title,
        String intro,
        String action,
        List<Flights> flights,
        String chosen,
        String override,
        String fault) {

    /** A movement with its whole stair, from the easiest step. */
    public record Flights(String movement, String name, boolean own, boolean fits, List<Step> steps) {}
}
