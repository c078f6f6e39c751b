package newel.catalogue;

import java.util.Set;
import newel.body.Demands;

/**
 * What the step down along a link changes: the names of all demands that fall and of all that rise, by the measure that
 * also checks the links. Names are those of {@link Link#rises()}.
 */
public record LinkChange(Set<String> falls, Set<String> rises) {
    public static LinkChange between(Variant harder, Demands asksMore, Variant easier, Demands asksLess) {
        return new LinkChange(
                Rises.names(Rises.between(easier, asksLess, harder, asksMore)),
                Rises.names(Rises.between(harder, asksMore, easier, asksLess)));
    }
}
