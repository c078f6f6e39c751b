package newel;

import java.io.PrintStream;
import java.util.List;

/** {@code newel sheet OUT.html}: every variant's picture on one page. Not written yet, and says so. */
final class WriteSheet {
    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        err.println("newel sheet: this version cannot do that yet");
        return Newel.REFUSED;
    }

    private WriteSheet() {}
}
