package newel.web.program;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import newel.catalogue.Catalogue;
import newel.catalogue.Variant;
import newel.compose.Account;
import newel.compose.GivenUp;
import newel.compose.Item;
import newel.compose.Proof;
import newel.compose.Why;
import newel.program.Version;
import newel.web.movement.MovementWords;

/** Tells what composing said, in words for the instructor. */
record Telling(Catalogue catalogue) {
    private static final int MOST_LINES = 6;

    ProgramPage.Told told(Optional<Account> account) {
        return new ProgramPage.Told(
                account.map(Telling::proof).orElse(""),
                account.stream()
                        .flatMap(each -> each.givenUp().stream())
                        .map(Telling::given)
                        .toList());
    }

    private static String proof(Account account) {
        return account.changed() ? "Changed since it was composed." : proof(account.proof());
    }

    private static String proof(Proof proof) {
        return proof.optimal()
                ? "Proved best: of all sessions that keep these limits and wishes, none scores more (%d points). The rounds were chosen first, then the warm-up and cool-down for them."
                        .formatted(proof.score())
                : "The best that was found: %d points. Whether there is a better one was not decided; none can have more than %d."
                        .formatted(proof.score(), proof.bound());
    }

    /** The wish itself is among what cannot hold together; it is not said twice. */
    private static ProgramPage.Given given(GivenUp given) {
        return new ProgramPage.Given(
                given.wish(),
                lines(given.conflict().stream()
                        .filter(line -> !line.equals(given.wish()))
                        .toList()));
    }

    /** What cannot hold together, told so far as one reads on. */
    static List<String> lines(List<String> conflict) {
        List<String> told =
                conflict.stream().limit(MOST_LINES).map(Telling::line).collect(Collectors.toCollection(ArrayList::new));
        if (conflict.size() > MOST_LINES) {
            told.add("And %d more".formatted(conflict.size() - MOST_LINES));
        }
        return told;
    }

    /** A wish or a limit that stands against something, as a line of its own. */
    static String line(String line) {
        if (line.equals("at home")) {
            return "What there is at home";
        }
        boolean bracketed = line.startsWith("(") && line.endsWith(")");
        return MovementWords.capital(bracketed ? line.substring(1, line.length() - 1) : line);
    }

    ProgramPage.Reasons reasons(Version version, DayOfWeek day, Item item) {
        boolean always = version.origin().brief().pinned().contains(item.movement());
        return version.origin()
                .account(day)
                .flatMap(account -> account.why(item.movement()))
                .map(why -> new ProgramPage.Reasons(lines(why), next(why), always))
                .orElse(new ProgramPage.Reasons(List.of(), "", always));
    }

    private static List<ProgramPage.Counted> lines(Why why) {
        return why.lines().stream()
                .map(line -> new ProgramPage.Counted(line.title(), signed(line.points())))
                .toList();
    }

    private static String signed(int points) {
        return points < 0 ? "−" + -points : "+" + points;
    }

    private String next(Why why) {
        if (why.runnerUp().isEmpty()) {
            return "Nothing else would keep every rule in its place.";
        }
        String name = catalogue.variant(why.runnerUp()).map(Variant::name).orElse(why.runnerUp());
        return why.behind() == 0
                ? "As good in its place: %s.".formatted(name)
                : "Next for its place: %s, %d %s behind."
                        .formatted(name, why.behind(), why.behind() == 1 ? "point" : "points");
    }
}
