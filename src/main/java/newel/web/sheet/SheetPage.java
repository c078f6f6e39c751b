package newel.web.sheet;

import java.util.List;
import newel.figure.Picture;

/** Every variant's picture by movement, and everyone who is drawn, as one page that stands alone. */
public record SheetPage(String css, List<Person> people, List<Family> families) {
    public record Person(String id, String label, Picture portrait) {}

    public record Family(String name, List<Entry> entries) {}

    public record Entry(String id, String name, String position, String support, Picture picture) {}

    public int count() {
        return families.stream().mapToInt(family -> family.entries().size()).sum();
    }
}
