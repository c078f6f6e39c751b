package newel.compose;

import java.util.List;
import newel.adapt.Adaptation;
import newel.limit.Reason;
import newel.limit.Share;

/** An adaptation as a choice for a session. */
public final class Choices {
    public static Choice of(Adaptation adaptation) {
        return switch (adaptation) {
            case Adaptation.Keeps k -> new Choice.Do(k.variant(), Share.WHOLE, How.KEPT, List.of(), List.of());
            case Adaptation.Trimmed t ->
                new Choice.Do(t.variant(), t.share(), How.TRIMMED, List.of(), texts(t.reasons()));
            case Adaptation.Regressed r ->
                new Choice.Do(r.variant(), r.share(), How.REGRESSED, r.path(), texts(r.reasons()));
            case Adaptation.Substituted s ->
                new Choice.Do(s.variant(), s.share(), How.SUBSTITUTED, List.of(), texts(s.reasons()));
            case Adaptation.LeftOut l -> new Choice.Leave(texts(l.reasons()));
        };
    }

    private static List<String> texts(List<Reason> reasons) {
        return reasons.stream().map(Reason::text).toList();
    }

    private Choices() {}
}
