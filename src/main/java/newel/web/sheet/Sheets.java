package newel.web.sheet;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import newel.catalogue.Catalogue;
import newel.catalogue.Movement;
import newel.figure.Look;
import newel.figure.Looks;
import newel.figure.Portrait;
import newel.handout.Pictures;

/** Writes the contact sheet. */
public final class Sheets {
    public static String html(Catalogue catalogue) {
        TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
        engine.setBinaryStaticContent(true);
        StringOutput output = new StringOutput();
        engine.render("sheet/sheet.jte", page(catalogue), output);
        return output.toString();
    }

    static SheetPage page(Catalogue catalogue) {
        return new SheetPage(
                css(),
                Looks.all().stream().map(Sheets::person).toList(),
                catalogue.movements().stream().map(Sheets::family).toList());
    }

    private static SheetPage.Person person(Look look) {
        return new SheetPage.Person(look.id(), look.label(), Portrait.of(look));
    }

    private static SheetPage.Family family(Movement movement) {
        List<SheetPage.Entry> entries = movement.variants().stream()
                .map(v ->
                        new SheetPage.Entry(v.id(), v.name(), words(v.position()), words(v.support()), Pictures.of(v)))
                .toList();
        return new SheetPage.Family(movement.name(), entries);
    }

    private static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String css() {
        try (InputStream css = Sheets.class.getResourceAsStream("/static/css/figure.css")) {
            return new String(css.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Sheets() {}
}
