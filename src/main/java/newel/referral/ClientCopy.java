package newel.referral;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import newel.client.Profile;
import newel.practice.Settings;
import newel.screen.Urgency;

/**
 * The same for the client, in plain words: what was sent, to whom, and what to do until there is an answer.
 *
 * @param said what the letter says about them, line by line
 */
public record ClientCopy(String title, List<String> words, List<String> said, String call) {

    public static ClientCopy of(Draft draft, Letter letter, Profile person, Optional<Settings> practice) {
        List<String> said = Stream.of(letter.background(), letter.findings())
                .flatMap(List::stream)
                .map(ClientCopy::toYou)
                .toList();
        return new ClientCopy("Your copy, " + person.name(), words(draft, letter.date()), said, call(practice));
    }

    private static List<String> words(Draft draft, String date) {
        String reader = draft.to().forClient();
        return draft.urgency() == Urgency.EMERGENCY
                ? List.of(
                        "We called for help for you on " + date + ".",
                        "This note is for " + reader + ".",
                        "Do no exercise now. We will talk with you first.")
                : List.of(
                        "We wrote to " + reader + " on " + date + ".",
                        draft.urgency() == Urgency.SAME_DAY
                                ? "Please see a doctor today. Do not wait for us."
                                : "We would like to know what is safe for you.",
                        "Until then: " + meanwhile(draft),
                        "If you feel worse, do not wait. Call a doctor.");
    }

    private static String toYou(String line) {
        return line.replace("as told by the client", "as you told us")
                .replace("as told:", "as you told us:")
                .replace("said by the client", "said by you");
    }

    private static String meanwhile(Draft draft) {
        return draft.urgency() == Urgency.SAME_DAY || draft.meanwhile().startsWith("No exercise")
                ? "do no exercise."
                : "do only what we agreed on.";
    }

    private static String call(Optional<Settings> practice) {
        return practice.map(each -> "To ask us, call " + each.phone() + ".")
                .orElse("To ask us, speak to us when we meet.");
    }
}
