package newel.web.source;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import newel.practice.Rulebook;
import newel.practice.SignOffs;
import newel.source.Known;
import newel.store.Stores;
import newel.web.Pages;
import newel.web.Routes;
import newel.web.form.Choice;

public final class SourceRoutes implements Routes {
    private final Pages pages;
    private final Stores stores;
    private final Rulebook rulebook;

    public SourceRoutes(Pages pages, Stores stores, Rulebook rulebook) {
        this.pages = pages;
        this.stores = stores;
        this.rulebook = rulebook;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/sources", this::show);
    }

    private void show(Context ctx) {
        Optional<Known> known = Choice.read(Known.class, ctx.queryParam("known"));
        Rulebook shown = known.map(rulebook::only).orElse(rulebook);
        SignOffs signOffs = stores.signOffs().all();
        pages.show(
                ctx,
                "source/list.jte",
                new SourcesPage(
                        filters(known),
                        SourceLines.of(shown, signOffs),
                        known.map(Choice::of).orElse(""),
                        rulebook.all().size(),
                        shown.all().size(),
                        SourceLines.signed(rulebook, signOffs)));
    }

    private List<SourcesPage.Filter> filters(Optional<Known> chosen) {
        List<SourcesPage.Filter> filters = new ArrayList<>();
        filters.add(new SourcesPage.Filter("All", rulebook.all().size(), "/sources", chosen.isEmpty()));
        for (Known each : Known.values()) {
            int count = rulebook.only(each).all().size();
            if (count > 0) {
                filters.add(new SourcesPage.Filter(
                        capital(each.words()),
                        count,
                        "/sources?known=" + Choice.of(each),
                        chosen.filter(each::equals).isPresent()));
            }
        }
        return List.copyOf(filters);
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
