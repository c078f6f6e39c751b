package newel.web.client;

import java.util.List;
import newel.client.Client;
import newel.screen.Checked;
import newel.screen.Today;
import newel.source.Finding;
import newel.store.Stores;
import newel.web.Practice;

/**
 * What today's check says about the session of today.
 *
 * @param tone stop, care, well, or quiet while nothing was checked
 * @param path of the check made today; empty when there is none
 */
public record TodayBand(String base, String tone, String words, List<Finding> reasons, String path, boolean emergency) {

    public static TodayBand of(Client client, Stores stores, Practice practice) {
        String base = "/clients/" + client.id().value() + "/today";
        return stores.checks()
                .on(client.id(), practice.today())
                .map(checked -> of(base, checked, practice.emergencyCall()))
                .orElseGet(() -> new TodayBand(base, "quiet", "Not checked today", List.of(), "", false));
    }

    public static TodayBand of(String base, Checked checked, String emergencyCall) {
        return new TodayBand(
                base,
                tone(checked.outcome()),
                words(checked.outcome(), emergencyCall),
                checked.outcome().reasons(),
                base + "/" + checked.id(),
                checked.outcome() instanceof Today.NotToday not && not.whom() == Today.Whom.EMERGENCY);
    }

    private static String tone(Today outcome) {
        return switch (outcome) {
            case Today.Go go -> "well";
            case Today.LightOnly light -> "care";
            case Today.NotToday not -> "stop";
        };
    }

    private static String words(Today outcome, String emergencyCall) {
        return switch (outcome) {
            case Today.Go go -> go.reasons().isEmpty() ? "Go" : "Go, and mind this";
            case Today.LightOnly light -> "Light work only: easy talk, no resistance, nothing new";
            case Today.NotToday not ->
                not.whom() == Today.Whom.EMERGENCY
                        ? "Emergency: " + emergencyCall + " now. Not today"
                        : "Not today. " + not.whom().words();
        };
    }
}
