package newel;

import java.io.PrintStream;
import java.util.List;
import newel.catalogue.Catalogue;
import newel.catalogue.CatalogueFigures;
import newel.catalogue.Catalogues;
import newel.catalogue.LinkDemands;
import newel.catalogue.ReadCatalogue;
import newel.coverage.Coverage;
import newel.coverage.CoverageTable;
import newel.limit.Presets;

/**
 * {@code newel check}: the catalogue's figures, a name and a value a line, and every fault. {@code --links} prints what each
 * link changes, {@code --coverage} what still fits under each limit.
 */
final class CheckCatalogue {
    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        String asked = arguments.isEmpty() ? "" : arguments.getFirst();
        if (arguments.size() > 1 || !List.of("", "--links", "--coverage").contains(asked)) {
            err.println("newel check: takes --links or --coverage after it, or nothing");
            return Newel.REFUSED;
        }
        return switch (Catalogues.read()) {
            case ReadCatalogue.Sound sound -> sound(sound, asked, out, err);
            case ReadCatalogue.Broken broken -> {
                CatalogueFigures.of(broken).lines().forEach(out::println);
                broken.flaws().forEach(flaw -> err.println(flaw));
                yield Newel.REFUSED;
            }
        };
    }

    private static int sound(ReadCatalogue.Sound sound, String asked, PrintStream out, PrintStream err) {
        return switch (asked) {
            case "--links" -> links(sound.catalogue(), out);
            case "--coverage" -> coverage(sound.catalogue(), out, err);
            default -> {
                CatalogueFigures.of(sound).lines().forEach(out::println);
                yield Newel.DONE;
            }
        };
    }

    private static int links(Catalogue catalogue, PrintStream out) {
        out.println("angles in degrees; loads in thousandths of body weight times stature; ways, widths and shares in "
                + "hundredths");
        catalogue.movements().forEach(movement -> LinkDemands.of(movement).forEach(out::println));
        return Newel.DONE;
    }

    private static int coverage(Catalogue catalogue, PrintStream out, PrintStream err) {
        Coverage coverage = Coverage.of(catalogue, Presets.read());
        CoverageTable.lines(coverage).forEach(out::println);
        coverage.faults().forEach(err::println);
        return coverage.faults().isEmpty() ? Newel.DONE : Newel.REFUSED;
    }

    private CheckCatalogue() {}
}
