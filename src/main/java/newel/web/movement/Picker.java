package newel.web.movement;

import java.util.List;
import newel.store.ClientStore;

/** The clients to choose from: whoever has finished intake. */
final class Picker {
    static List<FindPage.Option> of(List<ClientStore.Opened> clients, String chosen) {
        return clients.stream()
                .filter(ClientStore.Opened::whole)
                .map(each -> new FindPage.Option(
                        each.id().value(), each.name(), each.id().value().equals(chosen)))
                .toList();
    }

    private Picker() {}
}
