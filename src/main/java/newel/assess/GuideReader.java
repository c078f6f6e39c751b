package newel.assess;

import java.util.List;
import newel.catalogue.Purpose;
import newel.catalogue.Region;
import newel.client.Measure;

/** Reads the file of one test. */
final class GuideReader {
    static Guide read(Mapping node) {
        Measure measure = node.one("measure", Measure.class);
        Guide guide = new Guide(
                measure,
                better(node),
                node.decimal("least"),
                node.decimal("most"),
                node.decimal("decimals").intValue(),
                node.some("asks", Asked.class),
                node.optional("sides"),
                howTo(node),
                node.texts("pictures"),
                node.has("readAs") ? node.one("readAs", Measure.class) : measure,
                node.some("purposes", Purpose.class),
                node.some("regions", Region.class),
                TableReader.norms(node),
                TableReader.cutOffs(node),
                TableReader.scales(node),
                TableReader.meaningful(node));
        GuideChecks.check(guide, node);
        node.finish();
        return guide;
    }

    private static boolean better(Mapping node) {
        String better = node.text("better");
        if (!List.of("more", "less").contains(better)) {
            node.fault("better is neither more nor less: " + better);
        }
        return better.equals("less");
    }

    private static HowTo howTo(Mapping node) {
        return new HowTo(
                node.text("tells"),
                node.texts("needs"),
                words(node, "setUp"),
                words(node, "say"),
                words(node, "count"),
                words(node, "stop"),
                words(node, "notFor"));
    }

    private static List<String> words(Mapping node, String key) {
        List<String> words = node.texts(key);
        if (words.isEmpty()) {
            node.fault("has no words for " + key);
        }
        return words;
    }

    private GuideReader() {}
}
