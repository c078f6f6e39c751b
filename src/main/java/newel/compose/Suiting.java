package newel.compose;

import java.util.List;
import java.util.Set;
import newel.adapt.Way;
import newel.catalogue.Dose;
import newel.catalogue.Variant;
import newel.limit.Fit;
import newel.limit.Lasts;
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

    /** Every form of the wanted variant's movement that fits and asks no more; none where its kind has to wait. */
    List<Way> ways(Variant wanted);

    Lasts lasts(Variant variant, Share share, Dose dose);

    /** Longest times without a break. */
    Endurance endurance();

    /** Whose word limits this person: each limitation, the home, the check at the start, what has to wait. */
    List<String> limitations();

    /** The same person if these limitations were not. */
    Suiting without(Set<String> limitations);
}
