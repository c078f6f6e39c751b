package newel;

import java.util.Arrays;
import java.util.List;

/** Reads what is asked on the command line and starts it. */
public final class Newel {
    static final int DONE = 0;
    static final int REFUSED = 2;

    public static void main(String[] args) {
        List<String> words = Arrays.asList(args);
        int status = run(words);
        if (status != DONE) {
            System.exit(status);
        }
    }

    private static int run(List<String> words) {
        String first = words.isEmpty() ? "" : words.getFirst();
        List<String> rest = words.isEmpty() ? words : words.subList(1, words.size());
        return switch (first) {
            case "program" -> PrintProgram.run(rest, System.out, System.err);
            case "check" -> CheckCatalogue.run(rest, System.out, System.err);
            case "sheet" -> WriteSheet.run(rest, System.out, System.err);
            default -> Serve.run(words, System.out, System.err);
        };
    }

    private Newel() {}
}
