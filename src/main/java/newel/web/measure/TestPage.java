package newel.web.measure;

import java.util.List;
import newel.assess.Guide;
import newel.assess.Guides;
import newel.assess.HowTo;
import newel.catalogue.Catalogue;
import newel.client.Client;
import newel.figure.Picture;
import newel.handout.Pictures;
import newel.limit.Share;
import newel.screen.Screening;
import newel.source.Rule;
import newel.web.client.ClientHeader;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.Faults;
import newel.web.form.Typed;

/** How one test is run, and the form for its result. */
public record TestPage(
        ClientHeader header,
        Waiting waiting,
        String id,
        String name,
        HowTo how,
        List<Picture> pictures,
        List<Ask> asks,
        Faults faults,
        List<MeasureCard.Line> figures) {

    /** What the figures rest on. */
    public List<Rule> rules() {
        return figures.stream().map(MeasureCard.Line::rule).toList();
    }

    static TestPage of(
            Client client,
            ClientHeader header,
            Screening screening,
            Guide guide,
            Guides guides,
            Catalogue catalogue,
            Typed typed,
            Faults faults) {
        return new TestPage(
                header,
                Waiting.of(screening),
                Choice.of(guide.measure()),
                guide.measure().words(),
                guide.how(),
                guide.pictures().stream()
                        .flatMap(id -> catalogue.variant(id).stream())
                        .map(variant -> Pictures.of(variant, Share.WHOLE, client.look()))
                        .toList(),
                new MeasureForm(guide).asks(new Asking(typed, faults)),
                faults,
                Held.lines(guides.of(guide.readAs()), client, header.age()));
    }
}
