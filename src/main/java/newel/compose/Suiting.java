package newel.compose;

import java.util.List;
import newel.catalogue.Dose;
import newel.catalogue.Variant;
import newel.limit.Fit;
import newel.limit.Reason;
import newel.limit.Share;

/** What suits one person, as their limits and home say. */
public interface Suiting {
    /** What a wanted variant becomes for this person. */
    Choice adapt(Variant wanted);

    /** Whether a beginner's dose of a variant fits, whole or trimmed, or every reason why not. */
    Fit fit(Variant variant);

    /** What this dose of a variant at this share would break; empty when it fits. */
    List<Reason> broken(Variant variant, Share share, Dose dose);
}
