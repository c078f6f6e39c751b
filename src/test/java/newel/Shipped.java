package newel;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import newel.adapt.Adapting;
import newel.catalogue.Catalogue;
import newel.catalogue.Catalogues;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.compose.Suiting;
import newel.limit.Fitting;
import newel.limit.Presets;
import newel.limit.VariantDemands;
import newel.program.Drafting;
import newel.program.Suited;
import newel.program.Version;
import newel.screen.Screening;

/** What is shipped, read once for all tests. */
public final class Shipped {
    public static final Catalogue CATALOGUE = Catalogues.read().orStop();
    public static final VariantDemands DEMANDS = VariantDemands.ofBody();
    public static final Fitting FITTING = new Fitting(DEMANDS);
    public static final Adapting ADAPTING = new Adapting(CATALOGUE, DEMANDS);
    public static final Presets PRESETS = Presets.read();

    /** Many tests begin with the same people's programs. */
    private static final Map<Client, Version> DRAFTED = new ConcurrentHashMap<>();

    public static Variant variant(String id) {
        return CATALOGUE.variant(id).orElseThrow(() -> new AssertionError("no variant " + id));
    }

    /** With the limits of body, home and screening. */
    public static Suiting suiting(Client client) {
        Screening screening = Screening.of(client);
        return new Suited(CATALOGUE, DEMANDS).to(client, screening.limits(), screening.withheld());
    }

    /** The first program of a client for whom one can be made. */
    public static Version drafted(Client client) {
        return DRAFTED.computeIfAbsent(client, Shipped::draft);
    }

    private static Version draft(Client client) {
        return new Drafting(CATALOGUE, client, suiting(client), People.TODAY)
                .first()
                .made()
                .orElseThrow();
    }

    private Shipped() {}
}
