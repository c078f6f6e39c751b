package newel.web.program;

import java.time.DayOfWeek;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import newel.catalogue.Catalogue;
import newel.catalogue.Kind;
import newel.catalogue.Movement;
import newel.catalogue.Purpose;
import newel.catalogue.Variant;
import newel.compose.Block;
import newel.compose.BlockKind;
import newel.compose.Item;
import newel.compose.Timing;
import newel.handout.DoseWords;
import newel.handout.Pictures;
import newel.handout.RangeWords;
import newel.program.Difference;
import newel.program.Version;
import newel.screen.Permission;
import newel.screen.WeekCheck;
import newel.store.Stores;
import newel.web.Practice;
import newel.web.client.ClientHeader;
import newel.web.client.TodayBand;
import newel.web.stair.Drawn;
import newel.web.stair.Step;

/** Makes the program page from what is known. */
final class ProgramPages {
    static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private final Catalogue catalogue;
    private final Timing timing;
    private final Stores stores;
    private final Practice practice;

    ProgramPages(Stores stores, Practice practice) {
        this.catalogue = practice.catalogue();
        this.stores = stores;
        this.practice = practice;
        this.timing = new Timing(catalogue);
    }

    ProgramPage page(Known known, Version version, Refusal refusal, String link) {
        boolean open = isOpen(known, version);
        return new ProgramPage(
                ClientHeader.of(known.client(), practice),
                TodayBand.of(known.client(), stores, practice),
                "/clients/" + known.client().id().value() + "/program",
                known.screening().face(),
                refusal.why(),
                refusal.at(),
                open,
                version.number(),
                version.made().format(DAY),
                version.reason(),
                minutes(timing.session(version.session())),
                parts(known, version, refusal),
                leftOut(version),
                week(version),
                days(version),
                versions(known, version),
                changed(known, version),
                new ProgramPage.Link(link, known.screening().permission() == Permission.START),
                Timing.WATER_BREAK);
    }

    private static boolean isOpen(Known known, Version version) {
        return version.number() == known.program().newest().number();
    }

    private List<ProgramPage.Part> parts(Known known, Version version, Refusal refusal) {
        boolean open = isOpen(known, version);
        Map<String, Integer> clock = timing.clock(version.session());
        List<ProgramPage.Part> parts = new ArrayList<>();
        int round = 1;
        for (Block block : version.session().blocks()) {
            boolean isRound = block.kind() == BlockKind.ROUND;
            String title = isRound
                    ? block.kind().words() + " " + round++
                    : block.kind().words();
            List<ProgramPage.Row> rows = block.items().stream()
                    .map(item -> row(known, item, clock.get(item.movement()), open, refusal))
                    .toList();
            parts.add(new ProgramPage.Part(parts.size(), title, note(block), minutes(timing.block(block)), open, rows));
        }
        return parts;
    }

    private static String note(Block block) {
        return switch (block.kind()) {
            case WARM_UP -> "Starts easy and moves what the rounds will load.";
            case BALANCE -> "While fresh, with something to hold on to.";
            case ROUND ->
                (block.passes() > 1 ? "Gone through twice, " : "Gone through once, ") + block.restSeconds()
                        + " seconds of rest after each.";
            case COOL_DOWN -> "Stretches what was worked.";
        };
    }

    private ProgramPage.Row row(Known known, Item item, int seconds, boolean open, Refusal refusal) {
        String look = known.client().look();
        boolean refused = refusal.movement().equals(item.movement());
        Variant variant = catalogue.variant(item.variant()).orElseThrow();
        return new ProgramPage.Row(
                item.movement(),
                clock(seconds),
                Pictures.of(variant, item.share(), look),
                Drawn.motion(variant, item.share(), look),
                variant.name(),
                DoseWords.of(item.dose(), variant.sides()),
                refused ? DoseBoxes.typed(refusal) : DoseBoxes.of(item),
                refused ? refusal.why() : "",
                RangeWords.of(item.share()),
                why(item),
                item.override(),
                open ? stair(known, variant) : List.of());
    }

    private List<String> why(Item item) {
        String how = switch (item.how()) {
            case KEPT -> "Fits as it is.";
            case SMALLER_DOSE -> "A smaller dose:";
            case TRIMMED -> "Through part of the way:";
            case REGRESSED -> "An easier form:";
            case SUBSTITUTED -> "In the place of %s:".formatted(wanted(item));
            case CHOSEN -> "Chosen by you.";
        };
        return Stream.concat(Stream.of(how), item.why().stream()).toList();
    }

    private String wanted(Item item) {
        return item.path().stream()
                .findFirst()
                .flatMap(catalogue::variant)
                .map(variant -> catalogue.movementOf(variant).name().toLowerCase(Locale.ROOT))
                .orElse("another movement");
    }

    /** At most three steps: one down, here, one up; a step that fits is shown before one that does not. */
    private List<Step> stair(Known known, Variant variant) {
        List<Step> steps = new ArrayList<>();
        nearest(known, catalogue.easier(variant), 0).ifPresent(steps::add);
        steps.add(here(known, variant));
        nearest(known, catalogue.harder(variant), 2).ifPresent(steps::add);
        return steps;
    }

    private static Step here(Known known, Variant variant) {
        return Step.of(
                1, variant, known.suiting().fit(variant), true, known.client().look());
    }

    private static java.util.Optional<Step> nearest(Known known, List<Variant> variants, int level) {
        List<Step> steps = variants.stream()
                .map(each -> Step.of(
                        level,
                        each,
                        known.suiting().fit(each),
                        false,
                        known.client().look()))
                .toList();
        return steps.stream()
                .filter(Step::fits)
                .findFirst()
                .or(() -> steps.stream().findFirst());
    }

    private List<ProgramPage.Out> leftOut(Version version) {
        return version.leftOut().stream()
                .map(out -> new ProgramPage.Out(
                        catalogue.movement(out.movement()).map(Movement::name).orElse(out.movement()), out.reasons()))
                .toList();
    }

    private List<ProgramPage.Week> week(Version version) {
        List<ProgramPage.Week> week = new ArrayList<>();
        for (Purpose purpose : Purpose.values()) {
            if (purpose != Purpose.PULSE) {
                boolean worked = version.session().items().anyMatch(item -> works(item, purpose));
                int least = purpose == Purpose.BALANCE ? WeekCheck.BALANCE_DAYS : WeekCheck.STRENGTH_DAYS;
                List<Boolean> on = version.days().stream().map(day -> worked).toList();
                week.add(new ProgramPage.Week(words(purpose), on, worked && on.size() >= least));
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

    private static List<String> days(Version version) {
        Set<DayOfWeek> days = version.days();
        return days.stream()
                .sorted()
                .map(day -> day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH))
                .toList();
    }

    private static List<ProgramPage.Line> versions(Known known, Version shown) {
        return known.program().versions().reversed().stream()
                .filter(version -> version.number() != shown.number())
                .map(version ->
                        new ProgramPage.Line(version.number(), version.made().format(DAY), version.reason()))
                .toList();
    }

    private List<ProgramPage.Changed> changed(Known known, Version version) {
        return known.program()
                .version(version.number() - 1)
                .map(before -> Difference.between(before, version).stream()
                        .map(this::told)
                        .toList())
                .orElse(List.of());
    }

    private ProgramPage.Changed told(Difference difference) {
        return switch (difference) {
            case Difference.Added added -> new ProgramPage.Changed("New", told(added.item()));
            case Difference.Removed removed -> new ProgramPage.Changed("Gone", told(removed.item()));
            case Difference.Moved moved -> new ProgramPage.Changed("Moved", told(moved.item()));
            case Difference.Changed changed ->
                new ProgramPage.Changed("Changed", told(changed.before()) + " became " + told(changed.after()));
        };
    }

    private String told(Item item) {
        Variant variant = catalogue.variant(item.variant()).orElseThrow();
        return variant.name() + " (" + DoseWords.of(item.dose(), variant.sides()) + ")";
    }

    private static String minutes(int seconds) {
        return (int) Math.round(seconds / 60.0) + " min";
    }

    private static String clock(int seconds) {
        return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
    }
}
