package newel.limit;

import java.util.ArrayList;
import java.util.List;
import newel.catalogue.Dose;
import newel.catalogue.Variant;

/** Judges one variant for one person's limits. */
public final class Fitting {
    private final VariantDemands demands;

    public Fitting(VariantDemands demands) {
        this.demands = demands;
    }

    /** Whole where that fits; otherwise through the most of its way that fits; otherwise every reason why not. */
    public Fit fit(Variant variant, Limits limits) {
        List<Reason> whole = broken(variant, Share.WHOLE, limits);
        if (whole.isEmpty()) {
            return new Fit.Fits();
        }
        if (whole.stream().allMatch(reason -> lessHelps(reason.limit()))) {
            for (Share share : demands.shares(variant)) {
                if (!share.whole() && keeps(variant, share, limits)) {
                    return new Fit.FitsTrimmed(share, whole);
                }
            }
        }
        return new Fit.DoesNotFit(whole);
    }

    /** Every limit that a beginner's dose of it at this share would break. */
    public List<Reason> broken(Variant variant, Share share, Limits limits) {
        return broken(variant, share, variant.dose().beginner(), limits);
    }

    /** Every limit that this dose of it at this share would break. */
    public List<Reason> broken(Variant variant, Share share, Dose dose, Limits limits) {
        Asked asked = demands.asked(variant, share).with(dose);
        List<Reason> reasons = new ArrayList<>();
        for (Bound bound : limits.bounds()) {
            Breaking.how(bound.limit(), asked)
                    .ifPresent(how -> reasons.add(
                            new Reason(bound.limit(), bound.limitation(), how + " " + bound.whose() + ".")));
        }
        return List.copyOf(reasons);
    }

    /** Whether a variant keeps all limits at this share. */
    public boolean keeps(Variant variant, Share share, Limits limits) {
        Asked asked = demands.asked(variant, share);
        return limits.bounds().stream()
                .allMatch(bound -> Breaking.how(bound.limit(), asked).isEmpty());
    }

    public Lasts lasts(Variant variant, Share share, Dose dose) {
        return demands.asked(variant, share).with(dose).lasts();
    }

    public List<Share> shares(Variant variant) {
        return demands.shares(variant);
    }

    /** Going less of the way asks less of these; the others do not depend on how far one goes. */
    static boolean lessHelps(Limit limit) {
        return switch (limit) {
            case Limit.Angle a -> true;
            case Limit.Load l -> true;
            case Limit.Ceiling c -> true;
            case Limit.Time t -> t.what() == Limit.Lasting.ARMS_HIGH;
            case Limit.Avoid a ->
                switch (a.what()) {
                    case HEAD_BELOW_HEART,
                            END_RANGE_SPINE_BENDING,
                            REACHING_BEHIND,
                            LOADED_TWIST,
                            OVERHEAD_WHEN_STANDING -> true;
                    case STRAIN,
                            IMPACT,
                            KNEELING,
                            LYING_FLAT,
                            QUICK_POSITION_CHANGE,
                            QUICK_HEAD_TURN,
                            LIFT_FROM_FLOOR,
                            ONE_LEG_WITHOUT_SUPPORT,
                            FLOOR -> false;
                };
            case Limit.Positions p -> false;
            case Limit.SupportNeeded s -> false;
            case Limit.GripAtMost g -> false;
            case Limit.NoWristWeight w -> false;
            case Limit.HeldAtMost h -> false;
            case Limit.CoordinationAtMost c -> false;
            case Limit.EffortAtMost e -> false;
            case Limit.KitAtHome k -> false;
            case Limit.ClearSpace c -> false;
            case Limit.Withheld w -> false;
        };
    }
}
