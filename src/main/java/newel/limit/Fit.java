package newel.limit;

import java.util.List;

/** The verdict on one variant for one person, with every reason and not only the first. */
public sealed interface Fit {
    record Fits() implements Fit {}

    /** Fits through a share of its way; the reasons say what the whole way would break. */
    record FitsTrimmed(Share share, List<Reason> reasons) implements Fit {}

    record DoesNotFit(List<Reason> reasons) implements Fit {}
}
