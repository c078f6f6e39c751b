package newel.web.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import newel.assess.StartingLevel;
import newel.assess.StartingLevels;
import newel.source.Finding;

/** Where to begin with one purpose, and the results that say so. */
public record StartLine(String what, String start, List<String> because) {

    static List<StartLine> of(StartingLevels levels) {
        List<StartLine> lines = new ArrayList<>();
        Stream.concat(levels.byPurpose().entrySet().stream(), levels.byRegion().entrySet().stream())
                .map(each -> of(words(each.getKey()), each.getValue()))
                .forEach(lines::add);
        lines.sort(java.util.Comparator.comparing(StartLine::what));
        return List.copyOf(lines);
    }

    private static StartLine of(String what, StartingLevel level) {
        return new StartLine(
                what,
                level.start().words(),
                level.because().stream().map(Finding::text).toList());
    }

    private static String words(Enum<?> what) {
        String region = what instanceof newel.catalogue.Region ? "Keeping the %s moving" : "%s";
        String text = region.formatted(what.name().toLowerCase(Locale.ROOT).replace('_', ' '));
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
