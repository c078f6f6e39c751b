package newel.web;

import java.time.Clock;
import java.time.LocalDate;
import newel.catalogue.Catalogue;
import newel.client.Client;
import newel.compose.Suiting;
import newel.limit.Presets;
import newel.limit.VariantDemands;
import newel.program.Suited;
import newel.screen.Screening;

/** What every page about programs asks: the catalogue, and what of it suits a client today. */
public final class Practice {
    private final Catalogue catalogue;
    private final Suited suited;
    private final Presets presets = Presets.read();
    private final Clock clock;

    public Practice(Catalogue catalogue, VariantDemands demands, Clock clock) {
        this.catalogue = catalogue;
        this.suited = new Suited(catalogue, demands);
        this.clock = clock;
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    public Presets presets() {
        return presets;
    }

    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** The limits of body, home and screening together. */
    public Suiting suiting(Client client) {
        return suited.to(client, Screening.of(client).limits());
    }
}
