package newel.program;

import java.util.List;
import java.util.Map;
import newel.adapt.Adapting;
import newel.catalogue.Catalogue;
import newel.catalogue.Kind;
import newel.client.Client;
import newel.compose.Suiting;
import newel.limit.Fitting;
import newel.limit.Limit;
import newel.limit.Limits;
import newel.limit.VariantDemands;

/** Finds what of the catalogue suits a client. */
public final class Suited {
    private final Catalogue catalogue;
    private final Adapting adapting;
    private final Fitting fitting;

    public Suited(Catalogue catalogue, VariantDemands demands) {
        this.catalogue = catalogue;
        this.adapting = new Adapting(catalogue, demands);
        this.fitting = new Fitting(demands);
    }

    /**
     * @param screening what the readiness and falls check asks of every variant
     * @param withheld kinds of movement that wait, each with what it waits for
     */
    public Suiting to(Client client, List<Limit> screening, Map<Kind, String> withheld) {
        Limits limits = Limits.of(client.limitations(), client.homeLimits(), screening);
        return new PersonSuiting(catalogue, adapting, fitting, limits, withheld);
    }

    /** Somebody without any limit, whom nothing is known of. */
    public Suiting anybody() {
        return new PersonSuiting(catalogue, adapting, fitting, Limits.NONE, Map.of());
    }
}
