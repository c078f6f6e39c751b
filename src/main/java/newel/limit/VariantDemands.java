package newel.limit;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import newel.body.Demands;
import newel.body.Statics;
import newel.body.Trimming;
import newel.catalogue.Variant;

/**
 * What each variant asks at each share. Worked out when first asked for and then kept: a body's demands depend on nothing
 * but the poses and the share. One object serves one catalogue.
 */
public final class VariantDemands {
    private record At(String variant, Share share) {}

    private final Measuring measuring;
    private final Map<At, Demands> written = new ConcurrentHashMap<>();
    private final Map<At, Asked> asked = new ConcurrentHashMap<>();
    private final Map<String, List<Share>> shares = new ConcurrentHashMap<>();

    public VariantDemands(Measuring measuring) {
        this.measuring = measuring;
    }

    /** By the body's statics. */
    public static VariantDemands ofBody() {
        return new VariantDemands(
                (poses, part, left, right) -> Statics.demands(Trimming.trimmed(poses, part, left, right)));
    }

    /** What both sides' passes ask, taken together. */
    public Demands at(Variant variant, Share share) {
        return asked(variant, share).body();
    }

    Asked asked(Variant variant, Share share) {
        return asked.computeIfAbsent(
                new At(variant.id(), share), at -> Asked.of(variant, Passes.merged(variant, share, this::asWritten)));
    }

    /** Every share that is tried, the most of the way first. */
    List<Share> shares(Variant variant) {
        return shares.computeIfAbsent(variant.id(), id -> Shares.mostFirst(variant));
    }

    private Demands asWritten(Variant variant, Share share) {
        return written.computeIfAbsent(
                new At(variant.id(), share),
                at -> measuring.measure(variant.keyPoses(), variant.trim().part(), share.left(), share.right()));
    }
}
