package newel.web.measure;

import java.util.List;
import newel.screen.Screening;

/**
 * What stands against testing this client today. A test is exercise too.
 *
 * @param tone stop or care; empty when nothing waits
 */
public record Waiting(String tone, String head, List<String> lines) {
    static Waiting of(Screening screening) {
        return switch (screening.permission()) {
            case NOTHING -> new Waiting("stop", "Do not test now. A test is exercise too.", screening.face());
            case PREPARE ->
                new Waiting("care", "Wait with tests that make the client breathe harder.", screening.face());
            case START ->
                screening.face().isEmpty()
                        ? new Waiting("", "", List.of())
                        : new Waiting("care", "Mind this before a test.", screening.face());
        };
    }

    public boolean any() {
        return !tone.isEmpty();
    }
}
