package newel;

import java.io.PrintStream;
import java.util.List;

/** {@code newel check}: the catalogue's faults and figures. Not written yet, and says so. */
final class CheckCatalogue {
    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        err.println("newel check: this version cannot do that yet");
        return Newel.REFUSED;
    }

    private CheckCatalogue() {}
}
