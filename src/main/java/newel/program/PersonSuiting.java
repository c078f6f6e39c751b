package newel.program;

import java.util.List;
import newel.adapt.Adapting;
import newel.catalogue.Variant;
import newel.compose.Choice;
import newel.compose.Choices;
import newel.compose.Suiting;
import newel.limit.Fit;
import newel.limit.Fitting;
import newel.limit.Limits;
import newel.limit.Reason;
import newel.limit.Share;

/** What suits a client, by the limits of body, home and screening together. */
public record PersonSuiting(Adapting adapting, Fitting fitting, Limits limits) implements Suiting {
    @Override
    public Choice adapt(Variant wanted) {
        return Choices.of(adapting.adapt(wanted, limits));
    }

    @Override
    public Fit fit(Variant variant) {
        return fitting.fit(variant, limits);
    }

    @Override
    public List<Reason> broken(Variant variant, Share share) {
        return fitting.broken(variant, share, limits);
    }
}
