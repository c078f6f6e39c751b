package newel.adapt;

import java.util.List;
import newel.catalogue.Variant;
import newel.limit.Reason;
import newel.limit.Share;

/** What a wanted variant becomes for a person. Reasons say what the wanted one, whole, would break. */
public sealed interface Adaptation {
    record Keeps(Variant variant) implements Adaptation {}

    record Trimmed(Variant variant, Share share, List<Reason> reasons) implements Adaptation {}

    /** @param path ids of the variants passed, from the wanted one to this one */
    record Regressed(Variant variant, Share share, List<String> path, List<Reason> reasons) implements Adaptation {}

    /** Another movement with the nearest purpose. */
    record Substituted(Variant variant, Share share, List<Reason> reasons) implements Adaptation {}

    /** Nothing fits: every reason, over all variants of the movement. */
    record LeftOut(List<Reason> reasons) implements Adaptation {}
}
