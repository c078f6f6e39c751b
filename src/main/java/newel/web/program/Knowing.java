package newel.web.program;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.client.ClientId;
import newel.program.Program;
import newel.store.Stores;
import newel.web.Practice;

/** Loads what a request about a program is about; what is not there is not found. */
record Knowing(Stores stores, Practice practice) {
    static final String AT = "/clients/{client}/program";

    Client client(Context ctx) {
        return stores.clients().find(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
    }

    Known known(Context ctx) {
        Client client = client(ctx);
        return known(client, stores.programs().of(client.id()).orElseThrow(NotFoundResponse::new));
    }

    Known known(Client client, Program program) {
        return new Known(client, practice.screening(client), practice.suiting(client), program);
    }

    /** The variant that the named item is done in. */
    Variant variant(Known known, String movement) {
        return known.program()
                .newest()
                .session()
                .item(movement)
                .flatMap(item -> practice.catalogue().variant(item.variant()))
                .orElseThrow(NotFoundResponse::new);
    }

    static String base(Client client) {
        return "/clients/" + client.id().value() + "/program";
    }
}
