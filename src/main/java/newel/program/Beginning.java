package newel.program;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import newel.assess.Start;
import newel.assess.StartingLevel;
import newel.assess.StartingLevels;
import newel.catalogue.Purpose;
import newel.client.Client;
import newel.client.Experience;
import newel.compose.Level;
import newel.compose.Levels;
import newel.source.Finding;

/**
 * At which level each purpose begins, and why where the measures changed it.
 *
 * <p>Experience says first, for everything. Where a measure calls for the easy forms of a purpose, that one begins at the
 * beginner's level; where it calls for one step further, one level higher (design choice).
 *
 * @param why sentences for the version; empty when the measures changed nothing
 */
public record Beginning(Levels levels, String why) {

    public static Beginning of(Client client, LocalDate day) {
        Level asked = level(client.wishes().experience());
        Map<Purpose, StartingLevel> measured = new EnumMap<>(Purpose.class);
        measured.putAll(StartingLevels.of(client, day).byPurpose());
        measured.values().removeIf(each -> moved(asked, each.start()) == asked);
        Map<Purpose, Level> levels = new EnumMap<>(Purpose.class);
        measured.forEach((purpose, each) -> levels.put(purpose, moved(asked, each.start())));
        String why = (why(measured, Start.EASY, "Easy forms to begin with for the ")
                        + why(measured, Start.FURTHER, "One step further to begin with for the "))
                .strip();
        return new Beginning(new Levels(asked, levels), why);
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

    private static String why(Map<Purpose, StartingLevel> measured, Start start, String opening) {
        List<String> purposes = new ArrayList<>();
        List<String> results = new ArrayList<>();
        measured.forEach((purpose, each) -> {
            if (each.start() == start) {
                purposes.add(purpose.name().toLowerCase(Locale.ROOT));
                each.because().stream().map(Finding::text).forEach(results::add);
            }
        });
        String told = results.stream().distinct().collect(Collectors.joining(" "));
        return purposes.isEmpty()
                ? ""
                : opening + String.join(", ", purposes) + ", because of the measures. " + told + " ";
    }
}
