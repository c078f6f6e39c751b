package newel.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import newel.assess.Consensus;
import newel.assess.Guides;
import newel.catalogue.Catalogue;
import newel.client.Client;
import newel.compose.Suiting;
import newel.limit.Limit;
import newel.limit.Presets;
import newel.limit.VariantDemands;
import newel.program.Drafting;
import newel.program.Suited;
import newel.screen.Choices;
import newel.screen.Intensity;
import newel.screen.Permission;
import newel.screen.Screening;

/** What every page about programs asks: the catalogue, and what of it suits a client today. */
public final class Practice {
    /** A program that stops may still be looked at and changed: it is not handed out, and nothing hard comes into it. */
    private static final List<Limit> WHILE_NOTHING_GOES_ON =
            List.of(new Limit.EffortAtMost(Intensity.LIGHT.effortAtMost()));

    private final Catalogue catalogue;
    private final VariantDemands demands;
    private final Suited suited;
    private final Presets presets = Presets.read();
    private final Clock clock;
    private final Supplier<Choices> choices;
    private final Supplier<Consensus> consensus;
    private final Supplier<String> emergencyCall;

    /** The strict choices hold, and nobody has said which number to call. */
    public Practice(Catalogue catalogue, VariantDemands demands, Clock clock) {
        this(catalogue, demands, clock, Choices::strict, () -> Consensus.EUROPE, () -> "call an ambulance");
    }

    private Practice(
            Catalogue catalogue,
            VariantDemands demands,
            Clock clock,
            Supplier<Choices> choices,
            Supplier<Consensus> consensus,
            Supplier<String> emergencyCall) {
        this.catalogue = catalogue;
        this.demands = demands;
        this.suited = new Suited(catalogue, demands);
        this.clock = clock;
        this.choices = choices;
        this.consensus = consensus;
        this.emergencyCall = emergencyCall;
        List<String> missing = Guides.shipped().missingPictures(catalogue);
        if (!missing.isEmpty()) {
            throw new IllegalStateException(String.join("\n", missing));
        }
    }

    /**
     * The same, by what is chosen where sources disagree; both are asked anew each time.
     *
     * @param call what to do first in an emergency, for the end of a sentence: "call 999"
     */
    public Practice choosing(Supplier<Choices> chosen, Supplier<Consensus> followed, Supplier<String> call) {
        return new Practice(catalogue, demands, clock, chosen, followed, call);
    }

    public String emergencyCall() {
        return emergencyCall.get();
    }

    public Choices choices() {
        return choices.get();
    }

    /** The tests with the lines of the working group that is followed. */
    public Guides guides() {
        return Guides.shipped().following(consensus.get());
    }

    public Screening screening(Client client) {
        return Screening.of(client, choices(), today());
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    public VariantDemands demands() {
        return demands;
    }

    public Presets presets() {
        return presets;
    }

    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** Somebody without any limit. */
    public Suiting anybody() {
        return suited.anybody();
    }

    public Drafting drafting(Client client) {
        return new Drafting(catalogue, client, suiting(client), today());
    }

    /** The limits of body, home and screening together. */
    public Suiting suiting(Client client) {
        Screening screening = screening(client);
        return screening.permission() == Permission.NOTHING
                ? suited.to(client, WHILE_NOTHING_GOES_ON, Map.of())
                : suited.to(client, screening.limits(), screening.withheld());
    }
}
