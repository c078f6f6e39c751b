package newel.adapt;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import newel.catalogue.Catalogue;
import newel.catalogue.Variant;
import newel.limit.Fitting;
import newel.limit.Limit;
import newel.limit.Limits;
import newel.limit.Reason;
import newel.limit.Share;
import newel.limit.VariantDemands;

/** Adapts wanted variants to a person's limits: the state with the least loss among those that fit. */
public final class Adapting {
    /** Losses that differ by less are equal, and the catalogue's order decides. */
    private static final double SAME_LOSS = 1e-9;

    /** @param least what is lost even at the whole way: no share of this variant loses less */
    private record Candidate(Variant variant, int links, double least) {}

    record State(Variant variant, Share share, double loss) {}

    private final Catalogue catalogue;
    private final Fitting fitting;
    private final Challenges challenges;
    private final Loss loss;
    private final Map<String, Steps> steps = new HashMap<>();

    public Adapting(Catalogue catalogue, VariantDemands demands) {
        this.catalogue = catalogue;
        this.fitting = new Fitting(demands);
        this.challenges = new Challenges(catalogue);
        this.loss = new Loss(challenges);
        catalogue.movements().forEach(movement -> steps.put(movement.id(), new Steps(movement)));
    }

    public Adaptation adapt(Variant wanted, Limits limits) {
        List<Reason> reasons = fitting.broken(wanted, Share.WHOLE, limits);
        if (reasons.isEmpty()) {
            return new Adaptation.Keeps(wanted);
        }
        Map<String, List<String>> ways = steps.get(wanted.movement()).from(wanted.id());
        return best(candidates(wanted, ways), wanted, limits)
                .map(state -> told(wanted, state, ways, reasons))
                .orElseGet(() -> new Adaptation.LeftOut(everyReason(wanted, limits)));
    }

    /** Every form of the wanted variant's own movement that fits and asks no more, each through the most of its way. */
    public List<Way> ways(Variant wanted, Limits limits) {
        Map<String, List<String>> paths = steps.get(wanted.movement()).from(wanted.id());
        List<Reason> reasons = fitting.broken(wanted, Share.WHOLE, limits);
        List<Way> ways = new ArrayList<>();
        for (Variant variant : catalogue.movementOf(wanted).variants()) {
            if (mayStandIn(wanted, variant)) {
                List<String> path = paths.get(variant.id());
                mostThatFits(variant, limits)
                        .ifPresent(share -> ways.add(new Way(
                                variant, share, loss.of(wanted, variant, share, path.size() - 1), path, reasons)));
            }
        }
        return ways;
    }

    private Adaptation told(Variant wanted, State state, Map<String, List<String>> ways, List<Reason> reasons) {
        Variant variant = state.variant();
        if (variant.id().equals(wanted.id())) {
            return new Adaptation.Trimmed(variant, state.share(), reasons);
        }
        return variant.movement().equals(wanted.movement())
                ? new Adaptation.Regressed(variant, state.share(), ways.get(variant.id()), reasons)
                : new Adaptation.Substituted(variant, state.share(), reasons);
    }

    /** Candidates come with the least possible loss first, so that the search may stop at the first that cannot win. */
    private Optional<State> best(List<Candidate> candidates, Variant wanted, Limits limits) {
        State best = null;
        for (Candidate candidate : candidates) {
            if (best != null && candidate.least() > best.loss() - SAME_LOSS) {
                break;
            }
            Optional<Share> share = mostThatFits(candidate.variant(), limits);
            if (share.isPresent()) {
                double lost = loss.of(wanted, candidate.variant(), share.get(), candidate.links());
                if (best == null || lost < best.loss() - SAME_LOSS) {
                    best = new State(candidate.variant(), share.get(), lost);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private Optional<Share> mostThatFits(Variant variant, Limits limits) {
        return switch (fitting.fit(variant, limits)) {
            case newel.limit.Fit.Fits fits -> Optional.of(Share.WHOLE);
            case newel.limit.Fit.FitsTrimmed trimmed -> Optional.of(trimmed.share());
            case newel.limit.Fit.DoesNotFit not -> Optional.empty();
        };
    }

    /** Variants of the same kind that challenge no more than the wanted one. */
    private List<Candidate> candidates(Variant wanted, Map<String, List<String>> ways) {
        List<Candidate> candidates = new ArrayList<>();
        for (Variant variant : catalogue.variants()) {
            if (mayStandIn(wanted, variant)) {
                int links = variant.movement().equals(wanted.movement())
                        ? ways.get(variant.id()).size() - 1
                        : -1;
                candidates.add(new Candidate(variant, links, loss.whole(wanted, variant, links)));
            }
        }
        candidates.sort(Comparator.comparingDouble(Candidate::least));
        return candidates;
    }

    boolean mayStandIn(Variant wanted, Variant variant) {
        return catalogue.movementOf(variant).kind()
                        == catalogue.movementOf(wanted).kind()
                && challenges.of(variant) <= challenges.of(wanted)
                && upright(variant) <= upright(wanted)
                && (variant.movement().equals(wanted.movement())
                        || variant.purposes().nearness(wanted.purposes()) > 0);
    }

    /** Nobody who wanted to sit is made to stand, and nobody who wanted to stand is made to step or kneel. */
    private static int upright(Variant variant) {
        return switch (variant.position()) {
            case LYING, SEATED_BACK, SEATED_EDGE -> 0;
            case STANDING -> 1;
            case STEPPING -> 2;
            case FLOOR -> 3;
        };
    }

    double loss(Variant wanted, Variant variant, Share share) {
        boolean own = variant.movement().equals(wanted.movement());
        int links = own
                ? steps.get(wanted.movement())
                                .from(wanted.id())
                                .get(variant.id())
                                .size()
                        - 1
                : -1;
        return loss.of(wanted, variant, share, links);
    }

    double challenge(Variant variant) {
        return challenges.of(variant);
    }

    /** For each limit that stands in the way anywhere in the movement, the sentence nearest to the wanted variant. */
    private List<Reason> everyReason(Variant wanted, Limits limits) {
        Map<Limit, Reason> reasons = new LinkedHashMap<>();
        fitting.broken(wanted, Share.WHOLE, limits).forEach(reason -> reasons.put(reason.limit(), reason));
        for (Variant variant : catalogue.movementOf(wanted).variants()) {
            fitting.broken(variant, Share.WHOLE, limits).forEach(reason -> reasons.putIfAbsent(reason.limit(), reason));
        }
        return List.copyOf(reasons.values());
    }
}
