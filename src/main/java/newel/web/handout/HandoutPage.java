package newel.web.handout;

import java.util.List;
import java.util.Locale;
import newel.catalogue.Reading;
import newel.handout.Graded;
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

    /** How hard it reads, part by part, for the instructor; nothing on the client's own page. */
    public List<Graded> grades() {
        return own() ? List.of() : Graded.of(handout);
    }

    public List<Graded> tooHard() {
        return grades().stream().filter(Graded::tooHard).toList();
    }

    /** Very short lines score under nought; no school is lower than that. */
    public static String plain(double score) {
        return String.format(Locale.ROOT, "%.1f", Math.max(0, score));
    }

    public String wholeGrade() {
        return plain(Graded.whole(handout).grade());
    }

    /** The other published scores of the whole paper in a line. */
    public String otherScores() {
        Reading whole = Graded.whole(handout);
        return "Flesch reading ease %s (90 and over is very easy), fog %s, SMOG %s%s."
                .formatted(
                        plain(whole.ease()),
                        plain(whole.fog()),
                        plain(whole.smog()),
                        whole.smogIsEstimate() ? " (an estimate: there are fewer than 30 sentences)" : "");
    }

    public String size() {
        return "pt-" + handout.points();
    }
}
