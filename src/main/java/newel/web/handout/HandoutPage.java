package newel.web.handout;

import java.util.List;
import newel.handout.Handout;

/**
 * A handout as a page.
 *
 * @param back where the instructor came from; empty on the client's own page
 * @param withheld why it may not be given out, for the instructor; empty when it may
 */
public record HandoutPage(Handout handout, String made, String back, List<String> withheld) {
    public boolean own() {
        return back.isEmpty();
    }

    public List<Integer> weeks() {
        return java.util.stream.IntStream.rangeClosed(1, handout.weeks())
                .boxed()
                .toList();
    }

    public String size() {
        return "pt-" + handout.points();
    }
}
