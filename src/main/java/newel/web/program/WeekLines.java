package newel.web.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import newel.catalogue.Catalogue;
import newel.catalogue.Kind;
import newel.catalogue.Purpose;
import newel.catalogue.Variant;
import newel.compose.Item;
import newel.program.Version;
import newel.screen.WeekCheck;

/** Which group is worked on which day, against the guideline. */
record WeekLines(Catalogue catalogue) {
    List<ProgramPage.Week> lines(Version version) {
        List<ProgramPage.Week> week = new ArrayList<>();
        for (Purpose purpose : Purpose.values()) {
            if (purpose != Purpose.PULSE) {
                int least = purpose == Purpose.BALANCE ? WeekCheck.BALANCE_DAYS : WeekCheck.STRENGTH_DAYS;
                List<Boolean> on = version.sessions().values().stream()
                        .map(session -> session.items().anyMatch(item -> works(item, purpose)))
                        .toList();
                long worked = on.stream().filter(each -> each).count();
                week.add(new ProgramPage.Week(words(purpose), on, worked >= least));
            }
        }
        return week;
    }

    /** A group counts as worked by strength work that has it as a main or strong helping group. */
    private boolean works(Item item, Purpose purpose) {
        Variant variant = catalogue.variant(item.variant()).orElseThrow();
        Kind kind = catalogue.movementOf(variant).kind();
        boolean trains =
                purpose == Purpose.BALANCE ? kind == Kind.BALANCE || kind == Kind.STRENGTH : kind == Kind.STRENGTH;
        return trains && variant.purposes().weight(purpose) >= 2;
    }

    private static String words(Purpose purpose) {
        String name = purpose.name().toLowerCase(Locale.ROOT);
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }
}
