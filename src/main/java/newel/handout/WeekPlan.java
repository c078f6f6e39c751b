package newel.handout;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import newel.catalogue.Catalogue;
import newel.catalogue.Movement;
import newel.catalogue.Variant;
import newel.compose.Block;
import newel.compose.BlockKind;
import newel.compose.Item;
import newel.compose.Session;
import newel.program.Version;

/**
 * One sheet for each thing that is done in the week, numbered through, in parts; and which numbers are done on which day,
 * where the days differ.
 */
final class WeekPlan {
    private final Catalogue catalogue;
    private final Version version;
    private final String look;
    /** By title of the part; parts in the order of a session. */
    private final Map<String, List<Sheet>> sheets = new LinkedHashMap<>();

    private final Map<String, String> notes = new LinkedHashMap<>();
    private final Map<List<Object>, Integer> numbers = new LinkedHashMap<>();

    static WeekPlan of(Catalogue catalogue, Version version, String look) {
        WeekPlan plan = new WeekPlan(catalogue, version, look);
        for (BlockKind kind : BlockKind.values()) {
            plan.gather(kind);
        }
        return plan;
    }

    private WeekPlan(Catalogue catalogue, Version version, String look) {
        this.catalogue = catalogue;
        this.version = version;
        this.look = look;
    }

    List<Handout.Part> parts() {
        return sheets.entrySet().stream()
                .map(part -> new Handout.Part(part.getKey(), notes.get(part.getKey()), part.getValue()))
                .toList();
    }

    /** Nothing where every day is the same. */
    List<Handout.Day> days() {
        if (version.sessions().values().stream().distinct().count() == 1) {
            return List.of();
        }
        return version.sessions().entrySet().stream()
                .map(day -> new Handout.Day(
                        day.getKey().getDisplayName(TextStyle.FULL, Locale.ENGLISH), turns(day.getValue())))
                .toList();
    }

    private List<Handout.Turn> turns(Session session) {
        List<Handout.Turn> turns = new ArrayList<>();
        int round = 0;
        for (Block block : session.blocks()) {
            round += block.kind() == BlockKind.ROUND ? 1 : 0;
            turns.add(new Handout.Turn(
                    title(block.kind(), round),
                    block.passes(),
                    block.items().stream().map(item -> numbers.get(key(item))).toList()));
        }
        return turns;
    }

    /** Rounds of the same place in the session go together, over all days. */
    private void gather(BlockKind kind) {
        int most = version.sessions().values().stream()
                .mapToInt(session -> blocks(session, kind).size())
                .max()
                .orElse(0);
        for (int at = 0; at < most; at++) {
            for (DayOfWeek day : version.days()) {
                List<Block> blocks = blocks(version.session(day), kind);
                if (at < blocks.size()) {
                    gather(title(kind, at + 1), blocks.get(at));
                }
            }
        }
    }

    private void gather(String title, Block block) {
        for (Item item : block.items()) {
            if (!numbers.containsKey(key(item))) {
                numbers.put(key(item), numbers.size() + 1);
                notes.putIfAbsent(title, note(block));
                sheets.computeIfAbsent(title, each -> new ArrayList<>()).add(sheet(numbers.size(), item));
            }
        }
    }

    private static List<Block> blocks(Session session, BlockKind kind) {
        return session.blocks().stream().filter(block -> block.kind() == kind).toList();
    }

    private static List<Object> key(Item item) {
        return List.of(item.variant(), item.share(), item.dose());
    }

    private static String title(BlockKind kind, int round) {
        return kind == BlockKind.ROUND ? kind.words() + " " + round : kind.words();
    }

    private static String note(Block block) {
        return switch (block.kind()) {
            case WARM_UP -> "Start easy. You should be able to chat all the time.";
            case BALANCE -> "Stand where you can hold on. Have somebody near if you feel unsteady.";
            case ROUND ->
                (block.passes() < 2 ? "Do each one time. " : "Do each one time. Then do them all again. ")
                        + "Rest %d seconds or more after each.".formatted(block.restSeconds());
            case COOL_DOWN -> "Slow down. Stretch until you feel a mild pull, never pain.";
        };
    }

    private Sheet sheet(int number, Item item) {
        Variant variant = catalogue.variant(item.variant()).orElseThrow();
        Movement movement = catalogue.movementOf(variant);
        return new Sheet(
                number,
                variant.name(),
                movement.why(),
                Pictures.of(variant, item.share(), look),
                DoseWords.of(item.dose(), variant.sides()),
                (PaceWords.pace(item.dose(), variant) + " " + PaceWords.effort(variant)).strip(),
                RangeWords.of(item.share()),
                variant.words().setUp(),
                variant.words().steps(),
                variant.words().breathing(),
                variant.words().stop(),
                item.override().isEmpty() ? "" : "Take extra care with this one: it asks more than your limits say.");
    }
}
