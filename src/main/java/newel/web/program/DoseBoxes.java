package newel.web.program;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import newel.catalogue.Dose;
import newel.compose.Item;

/** The boxes for a dose, filled with the item's own or with what was typed and refused. */
final class DoseBoxes {
    private static final Map<String, String> LABELS = new LinkedHashMap<>();

    static {
        LABELS.put("repetitions", "Times");
        LABELS.put("seconds", "Seconds");
        LABELS.put("sets", "Sets");
    }

    static List<ProgramPage.Box> of(Item item) {
        Dose dose = item.dose();
        Map<String, Integer> numbers =
                Map.of("repetitions", dose.repetitions(), "seconds", dose.seconds(), "sets", dose.sets());
        return boxes(item.movement(), name -> numbers.get(name).toString(), "");
    }

    static List<ProgramPage.Box> typed(Refusal refusal) {
        return boxes(refusal.about(), refusal.typed()::one, refusal.field());
    }

    private static List<ProgramPage.Box> boxes(String movement, Function<String, String> value, String wrong) {
        return LABELS.keySet().stream()
                .map(name -> new ProgramPage.Box(
                        "dose-" + movement + "-" + name, name, LABELS.get(name), value.apply(name), name.equals(wrong)))
                .toList();
    }

    private DoseBoxes() {}
}
