package newel.limit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import newel.body.Demands;
import newel.body.KeyPose;
import newel.body.Peak;
import newel.body.Side;
import newel.body.Trimming;
import newel.catalogue.Sides;
import newel.catalogue.Variant;

/**
 * The passes through a variant. Poses are written with the right side working; a variant whose sides take turns is gone
 * through once more as its mirror image, and what it asks is the most that either pass asks.
 */
public final class Passes {
    private Passes() {}

    /** The poses with the right side working, as a person does them who goes this share of the way. */
    public static List<KeyPose> drawn(Variant variant, Share share) {
        Share written = written(variant, share, Side.RIGHT);
        return Trimming.trimmed(variant.keyPoses(), variant.trim().part(), written.left(), written.right());
    }

    /** What both passes ask at this share, given what the poses as written ask at theirs. */
    static Demands merged(Variant variant, Share share, BiFunction<Variant, Share, Demands> asWritten) {
        Demands right = asWritten.apply(variant, written(variant, share, Side.RIGHT));
        if (variant.sides() == Sides.TOGETHER) {
            return right;
        }
        return most(right, mirrored(asWritten.apply(variant, written(variant, share, Side.LEFT))));
    }

    /** The shares to give to the poses as written, when this side works; for the left they are mirrored afterwards. */
    private static Share written(Variant variant, Share share, Side working) {
        if (variant.sides() == Sides.TOGETHER) {
            return share;
        }
        boolean right = working == Side.RIGHT;
        if (Coupling.limbsApart(variant)) {
            return right ? share : new Share(share.right(), share.left());
        }
        double whole = right ? share.right() : share.left();
        return new Share(whole, whole);
    }

    private static Demands mirrored(Demands d) {
        return new Demands(
                swapped(d.angles()),
                swapped(d.loads()),
                d.margin(),
                d.fingertips(),
                d.headBelowHeart(),
                d.armsHigh(),
                d.handShare(),
                d.baseWidth());
    }

    private static <K extends Enum<K>> Map<K, Peak> swapped(Map<K, Peak> peaks) {
        return peaks.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(
                        Map.Entry::getKey,
                        entry -> new Peak(
                                entry.getValue().right(), entry.getValue().left())));
    }

    private static Demands most(Demands a, Demands b) {
        return new Demands(
                most(a.angles(), b.angles()),
                most(a.loads(), b.loads()),
                Math.min(a.margin(), b.margin()),
                Math.max(a.fingertips(), b.fingertips()),
                a.headBelowHeart() || b.headBelowHeart(),
                Math.max(a.armsHigh(), b.armsHigh()),
                Math.max(a.handShare(), b.handShare()),
                Math.min(a.baseWidth(), b.baseWidth()));
    }

    private static <K extends Enum<K>> Map<K, Peak> most(Map<K, Peak> a, Map<K, Peak> b) {
        Map<K, Peak> most = new HashMap<>(a);
        b.forEach((key, peak) -> most.merge(key, peak, Peak::max));
        return Map.copyOf(most);
    }
}
