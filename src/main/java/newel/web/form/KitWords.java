package newel.web.form;

import java.util.LinkedHashMap;
import java.util.Map;
import newel.catalogue.Kit;

/** Things a home may have, in plain words. */
public final class KitWords {
    /** As written in a form, to its label, in the order they are shown. */
    public static Map<String, String> labels() {
        Map<String, String> kit = new LinkedHashMap<>();
        kit.put(Choice.of(Kit.CHAIR), "A firm chair");
        kit.put(Choice.of(Kit.ARMCHAIR), "A firm chair with armrests");
        kit.put(Choice.of(Kit.TOWEL), "A towel");
        kit.put(Choice.of(Kit.WALL), "A free wall");
        kit.put(Choice.of(Kit.COUNTER), "A kitchen counter");
        kit.put(Choice.of(Kit.BED), "A firm bed");
        kit.put(Choice.of(Kit.CUSHION), "A firm cushion");
        kit.put(Choice.of(Kit.STEP), "A low, steady step");
        kit.put(Choice.of(Kit.STAIRS), "Stairs with a rail");
        kit.put(Choice.of(Kit.BAG), "A shopping bag");
        kit.put(Choice.of(Kit.BOTTLE), "Two half-litre bottles");
        kit.put(Choice.of(Kit.BAND), "A long exercise band");
        return kit;
    }

    public static String of(Kit kit) {
        return labels().get(Choice.of(kit));
    }

    private KitWords() {}
}
