package newel.web.program;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.DayOfWeek;
import java.util.Locale;
import java.util.Optional;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.client.ClientId;
import newel.program.Brief;
import newel.program.Program;
import newel.program.Version;
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
    Variant variant(Known known, DayOfWeek day, String movement) {
        return known.program()
                .newest()
                .session(day)
                .item(movement)
                .flatMap(item -> practice.catalogue().variant(item.variant()))
                .orElseThrow(NotFoundResponse::new);
    }

    /** A version by its number in the address. */
    static Optional<Version> version(Context ctx, Known known) {
        String number = ctx.pathParam("number");
        return known.program().version(number.matches("\\d{1,6}") ? Integer.parseInt(number) : 0);
    }

    static Brief brief(Known known, Version version) {
        return version.origin().brief().or(known.client().wishes().minutes());
    }

    /** The day that the page shows: as asked for, else the first. */
    static DayOfWeek day(Context ctx, Version version) {
        String asked = Optional.ofNullable(ctx.formParam("day"))
                .or(() -> Optional.ofNullable(ctx.queryParam("day")))
                .orElse("");
        return version.days().stream()
                .filter(day -> word(day).equals(asked))
                .findFirst()
                .orElse(version.firstDay());
    }

    /** A day as it stands in an address. */
    static String word(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT);
    }

    /** The program's page at a day. */
    static String page(Known known, DayOfWeek day) {
        return base(known.client()) + (day == known.program().newest().firstDay() ? "" : "?day=" + word(day));
    }

    static String base(Client client) {
        return "/clients/" + client.id().value() + "/program";
    }
}
