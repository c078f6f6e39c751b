package newel.web.measure;

import newel.assess.Change;
import newel.assess.Scored;
import newel.client.Quantity;

/** What became of a result since the last one. */
final class ChangeWords {
    static String of(Change change) {
        String since = "since %s (%s)"
                .formatted(
                        DoneWords.DAY.format(change.before().measured().on()),
                        DoneWords.value(change.before()).toLowerCase(java.util.Locale.ENGLISH));
        if (change.way() == Change.Way.SAME) {
            return "No change " + since + ".";
        }
        String way = change.way() == Change.Way.BETTER ? "Better" : "Worse";
        boolean counted = !change.before().measured().unable()
                && !change.after().measured().unable();
        return "%s %s%s. %s"
                .formatted(way, since, counted ? ", " + by(change) : "", size(change, counted))
                .strip();
    }

    private static String by(Change change) {
        Quantity by = Scored.rounded(change.by());
        return (by.amount().signum() > 0 ? "+" : "") + by;
    }

    private static String size(Change change, boolean counted) {
        if (!counted) {
            return "";
        }
        return change.size()
                .map(size -> first(size.words()) + " (" + source(change) + ").")
                .orElse("No published figure is held for how much change means something.");
    }

    private static String source(Change change) {
        return newel.assess.Guides.shipped()
                .of(change.after().guide().readAs())
                .meaningful()
                .map(each -> each.rule().citation() + ", " + each.rule().known().words())
                .orElse("");
    }

    private static String first(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private ChangeWords() {}
}
