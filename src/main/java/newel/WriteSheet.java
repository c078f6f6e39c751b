package newel;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import newel.catalogue.Catalogue;
import newel.catalogue.Catalogues;
import newel.web.sheet.Sheets;

/** {@code newel sheet OUT.html}: every variant's picture on one page. */
final class WriteSheet {
    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        if (arguments.size() != 1) {
            err.println("newel sheet: name one file to write, such as sheet.html");
            return Newel.REFUSED;
        }
        try {
            Catalogue catalogue = Catalogues.read().orStop();
            Path file = Path.of(arguments.getFirst());
            Files.writeString(file, Sheets.html(catalogue));
            out.println(catalogue.variants().size() + " variants drawn in " + file);
            return Newel.DONE;
        } catch (IOException e) {
            err.println("newel sheet: cannot write " + arguments.getFirst() + ": " + e.getMessage());
            return Newel.REFUSED;
        }
    }

    private WriteSheet() {}
}
