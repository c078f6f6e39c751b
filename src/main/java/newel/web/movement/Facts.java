package newel.web.movement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import newel.catalogue.Variant;
import newel.handout.DoseWords;
import newel.web.form.KitWords;

/** What a form needs and how it is done. */
final class Facts {
    static List<VariantPage.Line> of(Variant variant) {
        List<VariantPage.Line> facts = new ArrayList<>();
        fact(facts, "Dose to begin with", DoseWords.of(variant.dose().beginner(), variant.sides()));
        fact(facts, "Dose to grow to", DoseWords.of(variant.dose().later(), variant.sides()));
        fact(facts, "Tempo", tempo(variant));
        fact(facts, "Longest hold", variant.holdSeconds() == 0 ? "" : variant.holdSeconds() + " seconds");
        fact(facts, "Sides", MovementWords.of(variant.sides()));
        fact(facts, "Part of the way", trim(variant));
        fact(facts, "Position", MovementWords.of(variant.position()));
        fact(facts, "Support", MovementWords.of(variant.support()));
        fact(facts, "Kit", kit(variant));
        fact(facts, "Grip", MovementWords.of(variant.grip()));
        fact(facts, "Effort", variant.effort() + " of 10");
        fact(facts, "Coordination", variant.coordination() + " of 3");
        fact(
                facts,
                "Mind",
                MovementWords.list(variant.traits().stream()
                        .sorted()
                        .map(MovementWords::of)
                        .toList()));
        return facts;
    }

    private static void fact(List<VariantPage.Line> facts, String what, String how) {
        if (!how.isEmpty()) {
            facts.add(new VariantPage.Line(what, how));
        }
    }

    private static String tempo(Variant variant) {
        return "%s out, %s held, %s back, in seconds"
                .formatted(
                        seconds(variant.tempo().out()),
                        seconds(variant.tempo().hold()),
                        seconds(variant.tempo().back()));
    }

    private static String seconds(double seconds) {
        return seconds == Math.rint(seconds) ? Long.toString((long) seconds) : Double.toString(seconds);
    }

    private static String trim(Variant variant) {
        String least = Math.round(100 * variant.trim().least()) + " %";
        return switch (variant.trim().part()) {
            case NONE -> "only the whole way does its work";
            case ARMS -> "each arm by itself, to " + least + " at the least";
            case LEGS -> "each leg by itself, to " + least + " at the least";
            case TRUNK -> "trunk and head, to " + least + " at the least";
            case WHOLE -> "all of it, to " + least + " at the least";
        };
    }

    private static String kit(Variant variant) {
        List<String> words = variant.kit().stream()
                .sorted()
                .map(KitWords::of)
                .map(label -> label.toLowerCase(Locale.ROOT))
                .toList();
        return words.isEmpty() ? "nothing" : MovementWords.list(words);
    }

    private Facts() {}
}
