package newel.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import newel.catalogue.Catalogue;
import newel.catalogue.Movement;
import newel.catalogue.Variant;
import newel.client.Goal;

/** What is said of one variant, as it is searched. Components are named as the columns are. */
record SearchText(
        String movement,
        String variant,
        String movementName,
        String variantName,
        String why,
        String goals,
        String setUp,
        String steps,
        String feel) {

    static List<SearchText> of(Catalogue catalogue) {
        return catalogue.variants().stream()
                .map(variant -> of(catalogue.movementOf(variant), variant))
                .toList();
    }

    private static SearchText of(Movement movement, Variant variant) {
        return new SearchText(
                movement.id(),
                variant.id(),
                movement.name(),
                variant.name(),
                movement.why(),
                goals(variant),
                String.join(" ", variant.words().setUp()),
                String.join(" ", variant.words().steps()),
                variant.words().feel() + " " + variant.words().breathing());
    }

    private static String goals(Variant variant) {
        return Arrays.stream(Goal.values())
                .filter(goal -> goal.servedBy(variant.purposes()))
                .map(Goal::words)
                .collect(Collectors.joining(". "));
    }

    /** Differs when any word of any of them does. */
    static String fingerprint(List<SearchText> texts) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            texts.forEach(text -> digest.update(text.toString().getBytes(StandardCharsets.UTF_8)));
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256 is part of every Java", e);
        }
    }
}
