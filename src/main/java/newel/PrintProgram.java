package newel;

import java.io.PrintStream;
import java.util.List;

/** {@code newel program CASE.json|--schema}: prints the program that would be built for a case file. Not written yet, and says so. */
final class PrintProgram {
    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        err.println("newel program: this version cannot do that yet");
        return Newel.REFUSED;
    }

    private PrintProgram() {}
}
