package newel.referral;

import java.util.List;
import java.util.stream.Stream;

/**
 * A letter as it is read: situation, background, findings, one question. All of it is text, so that what went out can be
 * kept word for word.
 *
 * @param howSoon the urgency, in words
 * @param phoned empty when nobody was told by phone
 * @param from who writes: practice, address, how to reach it
 * @param about who it is about
 * @param foot stands at the bottom of the page
 */
public record Letter(
        String title,
        String howSoon,
        String date,
        String to,
        String phoned,
        List<String> from,
        String about,
        List<String> needs,
        String situation,
        List<String> background,
        List<String> findings,
        String question,
        String meanwhile,
        String reply,
        String consent,
        String sender,
        String foot) {
    /** Characters in a line of the printed letter, and lines on one A4 page beside the fixed parts: measured in print. */
    private static final int LINE = 86;

    private static final int MOST_LINES = 26;

    /** A reader has time for one page. */
    public boolean fitsOnePage() {
        int lines = Stream.of(
                        needs.stream(),
                        background.stream(),
                        findings.stream(),
                        Stream.of(situation, question, meanwhile, reply, consent, phoned))
                .flatMap(all -> all)
                .mapToInt(text -> (text.length() + LINE - 1) / LINE)
                .sum();
        return lines <= MOST_LINES;
    }

    /** Everything that is said, line by line. */
    public List<String> lines() {
        return Stream.of(
                        Stream.of(title, howSoon, date, to, phoned),
                        from.stream(),
                        Stream.of(about),
                        needs.stream(),
                        Stream.of(situation),
                        background.stream(),
                        findings.stream(),
                        Stream.of(question, meanwhile, reply, consent, sender, foot))
                .flatMap(all -> all)
                .filter(text -> !text.isBlank())
                .toList();
    }
}
