package newel.web.client;

import newel.client.Client;
import newel.store.ClientStore;
import newel.store.Stores;
import newel.web.Practice;
import newel.web.form.Faults;

/** Makes a client's own page. */
record ClientPages(Stores stores, Practice practice) {
    static final String TEMPLATE = "client/show.jte";

    ClientPage page(Client client, Faults lookFaults) {
        boolean program = stores.programs().of(client.id()).isPresent();
        boolean drafted = stores.clients()
                .opened(client.id())
                .map(ClientStore.Opened::drafted)
                .orElse(false);
        return ClientPage.of(client, practice, TodayBand.of(client, stores, practice), program, drafted, lookFaults);
    }
}
