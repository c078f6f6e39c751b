package newel.web.program;

import java.time.DayOfWeek;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import newel.catalogue.Catalogue;
import newel.catalogue.Movement;
import newel.compose.Timing;
import newel.program.Version;
import newel.screen.Permission;
import newel.store.Stores;
import newel.web.Practice;
import newel.web.client.ClientHeader;
import newel.web.client.TodayBand;
import newel.web.form.Typed;

/** Makes the program page from what is known. */
final class ProgramPages {
    static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private final Catalogue catalogue;
    private final Timing timing;
    private final Stores stores;
    private final Practice practice;

    ProgramPages(Stores stores, Practice practice) {
        this.catalogue = practice.catalogue();
        this.stores = stores;
        this.practice = practice;
        this.timing = new Timing(catalogue);
    }

    /** @param day the day whose session is shown */
    ProgramPage page(Known known, Version version, DayOfWeek day, Refusal refusal, String link) {
        boolean open = isOpen(known, version);
        return new ProgramPage(
                ClientHeader.of(known.client(), practice),
                TodayBand.of(known.client(), stores, practice),
                "/clients/" + known.client().id().value() + "/program",
                known.screening().face(),
                refusal.why(),
                refusal.at(),
                open,
                version.number(),
                version.made().format(DAY),
                version.reason(),
                minutes(timing.session(version.session(day))),
                Knowing.word(day),
                tabs(known, version, day),
                new Rows(catalogue, timing).parts(known, version, day, refusal),
                leftOut(version),
                WeekCard.of(catalogue, version),
                VersionLines.others(known, version),
                new VersionLines(catalogue).changed(known, version),
                new ProgramPage.Link(link, known.screening().permission() == Permission.START),
                new Telling(catalogue).told(version.origin().account(day)),
                brief(known, version, refusal));
    }

    private BriefCard brief(Known known, Version version, Refusal refusal) {
        Typed typed = refusal.about(Refusal.BRIEF) ? refusal.typed() : BriefForm.typed(Knowing.brief(known, version));
        return BriefCard.of(catalogue, typed, known.client().wishes().minutes(), refusal);
    }

    static boolean isOpen(Known known, Version version) {
        return version.number() == known.program().newest().number();
    }

    private List<ProgramPage.Out> leftOut(Version version) {
        return version.leftOut().stream()
                .map(out -> new ProgramPage.Out(
                        catalogue.movement(out.movement()).map(Movement::name).orElse(out.movement()), out.reasons()))
                .toList();
    }

    /** One for each day, where there are several. */
    private static List<ProgramPage.Tab> tabs(Known known, Version version, DayOfWeek shown) {
        String page = isOpen(known, version)
                ? Knowing.base(known.client())
                : Knowing.base(known.client()) + "/versions/" + version.number();
        return version.days().size() == 1
                ? List.of()
                : version.days().stream()
                        .map(day -> new ProgramPage.Tab(
                                name(day, TextStyle.FULL), page + "?day=" + Knowing.word(day), day == shown))
                        .toList();
    }

    private static String name(DayOfWeek day, TextStyle style) {
        return day.getDisplayName(style, Locale.ENGLISH);
    }

    static String minutes(int seconds) {
        return (int) Math.round(seconds / 60.0) + " min";
    }
}
