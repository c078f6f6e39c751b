package newel.program;

import java.time.LocalDate;
import newel.assess.Start;
import newel.assess.StartingLevels;
import newel.client.Client;
import newel.client.Experience;
import newel.compose.Level;

/**
 * At which level a whole program begins, and why where the measures changed it.
 *
 * <p>Experience says first. Measures that call for the easy forms lower it to the beginner's; measures of legs, arms and
 * pulse that are all above the usual range raise it by one; anything else leaves it (design choice). A composer that knows a
 * level for each purpose asks {@link StartingLevels} itself.
 *
 * @param why a sentence for the version; empty when the measures changed nothing
 */
public record Beginning(Level level, String why) {

    public static Beginning of(Client client, LocalDate day) {
        StartingLevels levels = StartingLevels.of(client, day);
        Level asked = level(client.wishes().experience());
        Level begun = levels.whole().map(start -> moved(asked, start)).orElse(asked);
        return new Beginning(begun, begun == asked ? "" : why(levels, begun));
    }

    private static Level level(Experience experience) {
        return switch (experience) {
            case NEW -> Level.BEGINNER;
            case SOME -> Level.PRACTISED;
            case REGULAR -> Level.REGULAR;
        };
    }

    private static Level moved(Level asked, Start start) {
        return switch (start) {
            case EASY -> Level.BEGINNER;
            case USUAL -> asked;
            case FURTHER -> Level.values()[Math.min(asked.ordinal() + 1, Level.REGULAR.ordinal())];
        };
    }

    private static String why(StartingLevels levels, Level begun) {
        String results = String.join(" ", levels.because());
        return (begun == Level.BEGINNER
                        ? "It begins with the easy forms, because of the measures. "
                        : "It begins one step further, because of the measures. ")
                + results;
    }
}
