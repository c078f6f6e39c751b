package newel.web.client;

import java.util.List;
import newel.client.Client;
import newel.referral.Note;
import newel.store.ClientStore;
import newel.store.Stores;
import newel.web.Practice;
import newel.web.form.Faults;
import newel.web.referral.NoteListPage;

/** Makes a client's own page. */
record ClientPages(Stores stores, Practice practice) {
    static final String TEMPLATE = "client/show.jte";

    ClientPage page(Client client, Faults lookFaults) {
        boolean program = stores.programs().of(client.id()).isPresent();
        boolean drafted = stores.clients()
                .opened(client.id())
                .map(ClientStore.Opened::drafted)
                .orElse(false);
        return ClientPage.of(
                client, practice, TodayBand.of(client, stores, practice), program, drafted, lookFaults, notes(client));
    }

    /** Those about which something is still to be done. */
    private List<NoteListPage.Line> notes(Client client) {
        return stores.referrals().of(client.id()).stream()
                .filter(Note::open)
                .map(each -> NoteListPage.Line.of(
                        "/clients/" + client.id().value() + "/referrals/"
                                + each.id().value(),
                        each,
                        practice.today()))
                .toList();
    }
}
