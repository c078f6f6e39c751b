package newel.web.client;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import newel.client.ClientId;
import newel.store.Stores;
import newel.web.Routes;

/** Everything that is kept about a client, as one file. */
public final class ExportRoutes implements Routes {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Stores stores;

    public ExportRoutes(Stores stores) {
        this.stores = stores;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/clients/{client}/export.json", this::export);
    }

    private void export(Context ctx) {
        ClientId id = new ClientId(ctx.pathParam("client"));
        stores.clients().opened(id).orElseThrow(NotFoundResponse::new);
        stores.audit().write(id, "export", "Everything kept was written to a file.");
        JsonNode all = JSON.valueToTree(stores.exports().of(id));
        all.forEach(rows -> rows.forEach(row -> unfold((ObjectNode) row)));
        ctx.header("Content-Disposition", "attachment; filename=\"client.json\"");
        ctx.contentType("application/json; charset=utf-8").result(all.toPrettyString());
    }

    /** Columns that hold JSON become part of the file instead of a text within it. */
    private static void unfold(ObjectNode row) {
        row.properties().forEach(column -> {
            String text = column.getValue().asText("");
            if (text.startsWith("{") || text.startsWith("[")) {
                column.setValue(read(text, column.getValue()));
            }
        });
    }

    /** A text that only looks like JSON stays a text. */
    private static JsonNode read(String text, JsonNode otherwise) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException words) {
            return otherwise;
        }
    }
}
