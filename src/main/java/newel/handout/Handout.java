package newel.handout;

import java.time.LocalDate;
import java.util.List;
import newel.client.Contact;

/**
 * All that a client's paper says.
 *
 * @param name the client's name as it stands on the paper
 * @param days the days to do it, in words
 * @param toCall whom to call when something is wrong, or null
 * @param points size of body text
 * @param plan which sheets are done on which day; empty where every day is the same
 * @param columns dates or weekdays to tick, in order
 */
public record Handout(
        String name,
        int version,
        LocalDate made,
        String days,
        int minutes,
        List<String> cautions,
        List<String> stopSigns,
        Contact toCall,
        int points,
        List<Part> parts,
        List<Day> plan,
        List<String> columns,
        int weeks) {

    /** @param note how the part is done, such as going through it twice; empty for none */
    public record Part(String title, String note, List<Sheet> sheets) {}

    public record Day(String name, List<Turn> turns) {}

    /** @param passes how often its sheets are gone through */
    public record Turn(String title, int passes, List<Integer> numbers) {}

    public int movements() {
        return parts.stream().mapToInt(part -> part.sheets().size()).sum();
    }
}
