package newel.web.sheet;

import java.util.List;
import newel.figure.Picture;

/** Every variant's picture by movement, as one page that stands alone. */
public record SheetPage(String css, List<Family> families) {
    public record Family(String name, List<Entry> entries) {}

    public record Entry(String id, String name, Picture picture) {}

    public int count() {
        return families.stream().mapToInt(family -> family.entries().size()).sum();
    }
}
