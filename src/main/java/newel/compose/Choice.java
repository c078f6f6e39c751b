package newel.compose;

import java.util.List;
import newel.catalogue.Variant;
import newel.limit.Share;

/** The outcome of adapting a wanted variant to a person: something to do, or every reason why nothing fits. */
public sealed interface Choice {
    record Do(Variant variant, Share share, How how, List<String> path, List<String> why) implements Choice {}

    record Leave(List<String> reasons) implements Choice {}
}
