package newel.handout;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import newel.catalogue.Catalogue;
import newel.catalogue.Movement;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.compose.Block;
import newel.compose.BlockKind;
import newel.compose.Item;
import newel.program.Version;

/** Writes the handout of one version for one client. */
public final class Handouts {
    /** Weeks to tick before the program is looked at again (design choice). */
    private static final int WEEKS = 4;

    private final Catalogue catalogue;

    public Handouts(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    public Handout write(Client client, Version version) {
        return new Handout(
                client.profile().name(),
                version.number(),
                version.made(),
                days(version),
                client.wishes().minutes(),
                cautions(client),
                StopSigns.ALL,
                client.profile().toCall(),
                client.profile().textSize().points(),
                parts(version, client.look()),
                version.days().stream().sorted().map(Handouts::shortName).toList(),
                WEEKS);
    }

    private static List<String> cautions(Client client) {
        return Stream.concat(
                        Stream.of(
                                "Breathe all the time. Never hold your breath.",
                                "Put the chair against a wall. Wear shoes that grip."),
                        client.limitations().stream().flatMap(limitation -> limitation.cautions().stream()))
                .distinct()
                .toList();
    }

    private static String days(Version version) {
        List<String> names = version.days().stream()
                .sorted()
                .map(day -> day.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
                .toList();
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    private static String shortName(DayOfWeek day) {
        return day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }

    private List<Handout.Part> parts(Version version, String look) {
        List<Handout.Part> parts = new ArrayList<>();
        int number = 1;
        int round = 1;
        for (Block block : version.session().blocks()) {
            List<Sheet> sheets = new ArrayList<>();
            for (Item item : block.items()) {
                sheets.add(sheet(number++, item, look));
            }
            boolean isRound = block.kind() == BlockKind.ROUND;
            String title = isRound
                    ? block.kind().words() + " " + round++
                    : block.kind().words();
            parts.add(new Handout.Part(title, note(block), sheets));
        }
        return parts;
    }

    private static String note(Block block) {
        return switch (block.kind()) {
            case WARM_UP -> "Start easy. You should be able to chat all the time.";
            case BALANCE -> "Stand where you can hold on. Have somebody near if you feel unsteady.";
            case ROUND ->
                block.passes() < 2
                        ? "Do each of these one time. Rest and drink when you need to."
                        : "Do each of these one time. Then do them all again. Rest and drink when you need to.";
            case COOL_DOWN -> "Slow down. Stretch until you feel a mild pull, never pain.";
        };
    }

    private Sheet sheet(int number, Item item, String look) {
        Variant variant = catalogue.variant(item.variant()).orElseThrow();
        Movement movement = catalogue.movementOf(variant);
        return new Sheet(
                number,
                variant.name(),
                movement.why(),
                Pictures.of(variant, item.share(), look),
                DoseWords.of(item.dose(), variant.sides()),
                RangeWords.of(item.share()),
                variant.words().setUp(),
                variant.words().steps(),
                variant.words().breathing(),
                variant.words().stop(),
                item.override().isEmpty() ? "" : "Take extra care with this one: it asks more than your limits say.");
    }
}
