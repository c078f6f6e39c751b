package newel.assess;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import newel.client.Sex;
import newel.source.Known;
import newel.source.Rule;

/** Reads the tables of one test. */
final class TableReader {
    private static final Pattern SPAN = Pattern.compile("(\\d+)-(\\d+)");
    private static final Says BELOW = new Says("BELOW", "below the usual range");
    private static final Says WITHIN = new Says("WITHIN", "within the usual range");
    private static final Says ABOVE = new Says("ABOVE", "above the usual range");

    static List<Norm> norms(Mapping guide) {
        return guide.children("norms").stream().map(TableReader::norm).toList();
    }

    private static Norm norm(Mapping node) {
        Rule rule = rule(node);
        Norm norm = new Norm(
                rule,
                node.text("population"),
                node.text("spread"),
                says(node, "below", BELOW),
                says(node, "within", WITHIN),
                says(node, "above", ABOVE),
                node.flag("easy"),
                rows(node, rule.known(), 2));
        node.finish();
        return norm;
    }

    static List<CutOff> cutOffs(Mapping guide) {
        return guide.children("cutOffs").stream().map(TableReader::cutOff).toList();
    }

    private static CutOff cutOff(Mapping node) {
        Rule rule = rule(node);
        CutOff cutOff = new CutOff(
                rule,
                node.text("population"),
                node.one("compare", Compare.class),
                says(node.child("flag")),
                says(node.child("clear")),
                node.optional("onlyFor"),
                node.has("of") ? node.one("of", Consensus.class) : null,
                node.flag("easy"),
                rows(node, rule.known(), 1));
        node.finish();
        return cutOff;
    }

    static List<Scale> scales(Mapping guide) {
        return guide.children("scales").stream().map(TableReader::scale).toList();
    }

    private static Scale scale(Mapping node) {
        List<Scale.Grade> grades = new ArrayList<>();
        node.children("grades").forEach(each -> grades.add(grade(each)));
        if (grades.isEmpty() || grades.getLast().to() != null) {
            node.fault("its last grade is not open");
        }
        for (int i = 0; i + 1 < grades.size(); i++) {
            if (grades.get(i).to() == null
                    || i > 0 && grades.get(i).to().compareTo(grades.get(i - 1).to()) <= 0) {
                node.fault("its grades do not rise");
            }
        }
        Scale scale = new Scale(rule(node), node.text("population"), node.optional("onlyFor"), grades);
        node.finish();
        return scale;
    }

    private static Scale.Grade grade(Mapping node) {
        boolean included = node.has("upTo");
        BigDecimal to = included ? node.decimal("upTo") : node.has("under") ? node.decimal("under") : null;
        Scale.Grade grade = new Scale.Grade(to, included, new Says(node.text("code"), node.text("words")));
        node.finish();
        return grade;
    }

    static Optional<Meaningful> meaningful(Mapping guide) {
        if (!guide.has("change")) {
            return Optional.empty();
        }
        Mapping node = guide.child("change");
        Meaningful change =
                new Meaningful(rule(node), node.text("population"), node.decimal("small"), node.decimal("substantial"));
        if (change.small().signum() <= 0 || change.substantial().compareTo(change.small()) < 0) {
            node.fault("its changes are not a small and a greater number");
        }
        node.finish();
        return Optional.of(change);
    }

    static Rule rule(Mapping node) {
        return new Rule(node.text("id"), node.text("citation"), node.one("known", Known.class));
    }

    private static Says says(Mapping node, String key, Says otherwise) {
        return node.has(key) ? says(node.child(key)) : otherwise;
    }

    private static Says says(Mapping node) {
        Says says = new Says(node.text("code"), node.text("words"));
        node.finish();
        return says;
    }

    private static List<Row> rows(Mapping table, Known known, int figures) {
        List<Row> rows = new ArrayList<>();
        for (Mapping node : table.children("rows")) {
            Known own = node.has("known") ? node.one("known", Known.class) : known;
            List<String> unsure = node.texts("unsure");
            Ages ages = ages(node);
            add(rows, node, "all", ages, null, own, unsure, figures);
            add(rows, node, "women", ages, Sex.FEMALE, own, unsure, figures);
            add(rows, node, "men", ages, Sex.MALE, own, unsure, figures);
            node.finish();
        }
        if (rows.isEmpty()) {
            table.fault("has no rows");
        }
        return List.copyOf(rows);
    }

    private static void add(
            List<Row> rows,
            Mapping node,
            String key,
            Ages ages,
            Sex sex,
            Known known,
            List<String> unsure,
            int figures) {
        if (!node.has(key)) {
            return;
        }
        List<BigDecimal> numbers = node.decimals(key);
        if (numbers.size() != figures) {
            node.fault(key + " should hold " + figures + ": " + numbers);
        }
        rows.add(new Row(ages, sex, numbers.getFirst(), numbers.getLast(), known, unsure.contains(key)));
    }

    private static Ages ages(Mapping node) {
        if (!node.has("ages")) {
            return Ages.ANY;
        }
        Matcher span = SPAN.matcher(node.text("ages"));
        if (!span.matches()) {
            node.fault("ages are not like 60-64: " + node.optional("ages"));
            return Ages.ANY;
        }
        return new Ages(Integer.parseInt(span.group(1)), Integer.parseInt(span.group(2)));
    }

    private TableReader() {}
}
