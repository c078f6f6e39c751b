package newel.web.program;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import newel.catalogue.Catalogue;
import newel.catalogue.Variant;
import newel.compose.Block;
import newel.compose.BlockKind;
import newel.compose.Item;
import newel.compose.Session;
import newel.compose.Timing;
import newel.handout.DoseWords;
import newel.handout.PaceWords;
import newel.handout.Pictures;
import newel.handout.RangeWords;
import newel.program.Version;
import newel.web.stair.Drawn;
import newel.web.stair.Step;

/** Makes the parts of a session and their rows: picture, dose, why, and the steps on either side. */
record Rows(Catalogue catalogue, Timing timing) {
    List<ProgramPage.Part> parts(Known known, Version version, DayOfWeek day, Refusal refusal) {
        Session session = version.session(day);
        Telling telling = new Telling(catalogue);
        boolean open = ProgramPages.isOpen(known, version);
        Map<String, Integer> clock = timing.clock(session);
        List<ProgramPage.Part> parts = new ArrayList<>();
        int round = 1;
        for (Block block : session.blocks()) {
            boolean isRound = block.kind() == BlockKind.ROUND;
            String title = isRound
                    ? block.kind().words() + " " + round++
                    : block.kind().words();
            List<ProgramPage.Row> rows = block.items().stream()
                    .map(item -> row(
                            known,
                            item,
                            clock.get(item.movement()),
                            telling.reasons(version, day, item),
                            open,
                            refusal))
                    .toList();
            parts.add(new ProgramPage.Part(
                    parts.size(), title, note(block), ProgramPages.minutes(timing.block(block)), open, rows));
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

    private ProgramPage.Row row(
            Known known, Item item, int seconds, ProgramPage.Reasons reasons, boolean open, Refusal refusal) {
        String look = known.client().look();
        boolean refused = refusal.about(item.movement());
        Variant variant = catalogue.variant(item.variant()).orElseThrow();
        return new ProgramPage.Row(
                item.movement(),
                clock(seconds),
                Pictures.of(variant, item.share(), look),
                Drawn.motion(variant, item.share(), look),
                variant.name(),
                DoseWords.of(item.dose(), variant.sides()),
                pace(item, variant),
                refused ? DoseBoxes.typed(refusal) : DoseBoxes.of(item),
                refused ? refusal.why() : "",
                RangeWords.of(item.share()),
                why(item),
                item.override(),
                reasons,
                open ? stair(known, variant) : List.of());
    }

    private static String pace(Item item, Variant variant) {
        return (PaceWords.pace(item.dose(), variant) + " Effort %d of 10.".formatted(variant.effort())).strip();
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

    private static Optional<Step> nearest(Known known, List<Variant> variants, int level) {
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

    private static String clock(int seconds) {
        return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
    }
}
