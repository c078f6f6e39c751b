package newel.compose;

import java.util.List;

/** A proposed session and what had to be left out. */
public record Draft(Session session, List<LeftOut> leftOut) {
    public Draft {
        leftOut = List.copyOf(leftOut);
    }
}
