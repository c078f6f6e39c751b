package newel.web;

import java.util.List;
import newel.Shipped;
import newel.client.Client;
import newel.client.ClientId;
import newel.limit.Limitation;
import newel.store.Ids;
import newel.store.Stores;

/** Puts people of the cast into a database. */
public final class Cast {
    public static ClientId add(Stores stores, Client person) {
        List<Limitation> own = person.limitations().stream()
                .map(each -> each.withId(Ids.next()))
                .toList();
        return stores.clients()
                .add(new Client(
                        person.id(),
                        person.profile(),
                        person.home(),
                        person.wishes(),
                        person.readiness(),
                        person.falls(),
                        person.vitals(),
                        person.measures(),
                        own,
                        person.look()));
    }

    /** With a first program. */
    public static ClientId addWithProgram(Stores stores, Client person) {
        ClientId id = add(stores, person);
        stores.programs().begin(id, Shipped.drafted(person));
        return id;
    }

    private Cast() {}
}
