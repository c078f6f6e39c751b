package newel.adapt;

import java.util.List;
import newel.catalogue.Variant;
import newel.limit.Reason;
import newel.limit.Share;

/**
 * A form of a movement that fits a person.
 *
 * @param loss training value lost against the wanted variant, done whole
 * @param path ids of the variants passed, from the wanted one to this one, both included
 * @param reasons what the wanted variant, whole, would break
 */
public record Way(Variant variant, Share share, double loss, List<String> path, List<Reason> reasons) {
    public Way {
        path = List.copyOf(path);
        reasons = List.copyOf(reasons);
    }
}
