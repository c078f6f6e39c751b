package newel.web.movement;

import java.util.List;
import newel.catalogue.Fault;
import newel.web.client.ClientHeader;
import newel.web.stair.Stair;

/**
 * A movement, whole.
 *
 * @param header the chosen client, null for nobody
 * @param query goes after every path, so that the client stays chosen; empty for nobody
 * @param verdict how many forms fit, in words; empty for nobody
 */
public record MovementPage(
        ClientHeader header,
        String client,
        String query,
        List<FindPage.Option> clients,
        String path,
        String name,
        String why,
        String kind,
        String verdict,
        Stair stair,
        List<Trained> trained,
        List<Fault> faults,
        List<String> claims,
        String standingOnly,
        String about) {
    /** @param how in words @param weight 1 to 3, 0 where it is only kept moving */
    public record Trained(String what, String how, int weight) {}
}
