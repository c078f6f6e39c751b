package newel.web.program;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import newel.catalogue.Catalogue;
import newel.program.Brief;

/** Tells what composing is asked for anew, and why nothing came of it. */
record BriefWords(Catalogue catalogue) {
    /** One sentence; what did not change is not said. */
    String changed(Brief before, Brief after) {
        List<String> parts = new ArrayList<>();
        if (before.minutes() != after.minutes()) {
            parts.add("%d minutes instead of %d".formatted(after.minutes(), before.minutes()));
        }
        names(parts, "always in", before.pinned(), after.pinned());
        names(parts, "no longer always in", after.pinned(), before.pinned());
        names(parts, "left out", before.banned(), after.banned());
        names(parts, "no longer left out", after.banned(), before.banned());
        Set<String> more = new TreeSet<>();
        after.moreOf().stream()
                .filter(purpose -> !before.moreOf().contains(purpose))
                .forEach(purpose -> more.add(BriefForm.value(purpose)));
        if (!more.isEmpty()) {
            parts.add("more for: " + String.join(", ", more));
        }
        return parts.isEmpty()
                ? "Composed again from what is known today."
                : "Composed again: " + String.join("; ", parts) + ".";
    }

    private void names(List<String> parts, String title, Collection<String> before, Collection<String> after) {
        String added = after.stream()
                .filter(id -> !before.contains(id))
                .flatMap(id -> catalogue.movement(id).stream())
                .map(movement -> movement.name().toLowerCase(java.util.Locale.ROOT))
                .sorted()
                .collect(Collectors.joining(", "));
        if (!added.isEmpty()) {
            parts.add(title + ": " + added);
        }
    }

    static String refused(List<String> conflict) {
        return conflict.isEmpty()
                ? "No session could be made of this. Ask for less."
                : "No session can be made. These cannot hold together: "
                        + String.join("; ", Telling.lines(conflict))
                        + ". Change one of them.";
    }
}
