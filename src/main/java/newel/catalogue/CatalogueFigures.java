package newel.catalogue;

import java.util.List;

/** How large a catalogue is, and how many flaws it has. */
public record CatalogueFigures(int movements, int variants, int links, int faults) {
    public static CatalogueFigures of(ReadCatalogue read) {
        return switch (read) {
            case ReadCatalogue.Sound sound -> of(sound.catalogue());
            case ReadCatalogue.Broken broken ->
                new CatalogueFigures(0, 0, 0, broken.flaws().size());
        };
    }

    private static CatalogueFigures of(Catalogue catalogue) {
        return new CatalogueFigures(
                catalogue.movements().size(),
                catalogue.variants().size(),
                catalogue.variants().stream()
                        .mapToInt(variant -> variant.easier().size())
                        .sum(),
                0);
    }

    /** `name: value`, a line each. */
    public List<String> lines() {
        return List.of("movements: " + movements, "variants: " + variants, "links: " + links, "faults: " + faults);
    }
}
