package newel.compose;

import java.util.List;
import newel.catalogue.Dose;
import newel.limit.Share;

/**
 * A variant with its dose, at the share of its way that this person is asked to go.
 *
 * @param movement its movement; a session holds each movement once, so this names the item
 * @param path variants passed on the way from the wanted one, in order; for a substitute the one it stands in for
 * @param why reasons for the change, in the instructor's words
 * @param override written reason for keeping something that does not fit, empty for none
 */
public record Item(
        String movement,
        String variant,
        Share share,
        Dose dose,
        How how,
        List<String> path,
        List<String> why,
        String override) {
    public Item {
        path = List.copyOf(path);
        why = List.copyOf(why);
    }

    public Item withDose(Dose changed) {
        return new Item(movement, variant, share, changed, how, path, why, override);
    }

    /** The same, as the instructor's own choice. */
    public Item chosen() {
        return new Item(movement, variant, share, dose, How.CHOSEN, List.of(), why, override);
    }
}
