package newel.web.movement;

import java.util.HashMap;
import java.util.Map;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.compose.Suiting;
import newel.limit.Fit;
import newel.web.Practice;
import newel.web.client.ClientHeader;
import newel.web.stair.Step;

/** The client whose fit is shown. Lives as long as one request, in which each form is judged once. */
final class Chosen {
    private final Client client;
    private final ClientHeader header;
    private final Suiting suiting;
    private final Map<String, Fit> fits = new HashMap<>();

    Chosen(Client client, Practice practice) {
        this.client = client;
        this.header = ClientHeader.of(client, practice);
        this.suiting = practice.suiting(client);
    }

    Client client() {
        return client;
    }

    ClientHeader header() {
        return header;
    }

    String id() {
        return client.id().value();
    }

    String name() {
        return client.profile().name();
    }

    /** A step of this client's stair, with who is drawn for them. */
    Step step(int level, Variant variant, boolean here) {
        return Step.of(level, variant, fit(variant), here, look());
    }

    String look() {
        return client.look();
    }

    Fit fit(Variant variant) {
        return fits.computeIfAbsent(variant.id(), id -> suiting.fit(variant));
    }

    /** Whole or trimmed. */
    boolean may(Variant variant) {
        return !(fit(variant) instanceof Fit.DoesNotFit);
    }
}
