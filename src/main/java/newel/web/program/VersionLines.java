package newel.web.program;

import java.util.List;
import newel.catalogue.Catalogue;
import newel.catalogue.Variant;
import newel.compose.Item;
import newel.handout.DoseWords;
import newel.program.Difference;
import newel.program.Version;

/** Tells a program's other versions, and what changed from one to the next. */
record VersionLines(Catalogue catalogue) {
    static List<ProgramPage.Line> others(Known known, Version shown) {
        return known.program().versions().reversed().stream()
                .filter(version -> version.number() != shown.number())
                .map(version -> new ProgramPage.Line(
                        version.number(), version.made().format(ProgramPages.DAY), version.reason()))
                .toList();
    }

    List<ProgramPage.Changed> changed(Known known, Version version) {
        return known.program()
                .version(version.number() - 1)
                .map(before -> Difference.between(before, version).stream()
                        .map(this::told)
                        .toList())
                .orElse(List.of());
    }

    private ProgramPage.Changed told(Difference difference) {
        return switch (difference) {
            case Difference.Added added -> new ProgramPage.Changed("New", told(added.item()));
            case Difference.Removed removed -> new ProgramPage.Changed("Gone", told(removed.item()));
            case Difference.Moved moved -> new ProgramPage.Changed("Moved", told(moved.item()));
            case Difference.Changed changed ->
                new ProgramPage.Changed("Changed", told(changed.before()) + " became " + told(changed.after()));
        };
    }

    private String told(Item item) {
        Variant variant = catalogue.variant(item.variant()).orElseThrow();
        return variant.name() + " (" + DoseWords.of(item.dose(), variant.sides()) + ")";
    }
}
