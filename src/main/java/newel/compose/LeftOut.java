package newel.compose;

import java.util.List;

/** A movement that nothing of fits this person, with every reason. */
public record LeftOut(String movement, List<String> reasons) {
    public LeftOut {
        reasons = List.copyOf(reasons);
    }
}
