package newel;

import java.io.PrintStream;
import java.util.List;
import newel.catalogue.CatalogueFigures;
import newel.catalogue.Catalogues;
import newel.catalogue.ReadCatalogue;

/** {@code newel check}: the catalogue's figures, a name and a value a line, and every fault. */
final class CheckCatalogue {
    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        if (!arguments.isEmpty()) {
            err.println("newel check: takes nothing after it");
            return Newel.REFUSED;
        }
        ReadCatalogue read = Catalogues.read();
        CatalogueFigures.of(read).lines().forEach(out::println);
        return switch (read) {
            case ReadCatalogue.Sound sound -> Newel.DONE;
            case ReadCatalogue.Broken broken -> {
                broken.flaws().forEach(flaw -> err.println(flaw));
                yield Newel.REFUSED;
            }
        };
    }

    private CheckCatalogue() {}
}
