package newel.assess;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import newel.catalogue.Purpose;
import newel.catalogue.Region;
import newel.client.Measure;

/**
 * All that is held about one test.
 *
 * @param lessIsBetter a quicker time is the better one
 * @param least the smallest number that can be typed, in the measure's own unit
 * @param decimals how finely it is measured
 * @param pictures variants of the catalogue that show it
 * @param readAs the measure whose tables judge it: a timed walk is read as a walking speed
 * @param purposes what a result says about where to begin
 */
public record Guide(
        Measure measure,
        boolean lessIsBetter,
        BigDecimal least,
        BigDecimal most,
        int decimals,
        Set<Asked> asked,
        String sides,
        HowTo how,
        List<String> pictures,
        Measure readAs,
        Set<Purpose> purposes,
        Set<Region> regions,
        List<Norm> norms,
        List<CutOff> cutOffs,
        List<Scale> scales,
        Optional<Meaningful> meaningful) {

    /** The table that speaks first comes first. */
    public List<Table> tables() {
        return Stream.of(norms.stream(), cutOffs.stream(), scales.stream())
                .<Table>flatMap(each -> each)
                .toList();
    }

    Guide following(Consensus group) {
        return new Guide(
                measure,
                lessIsBetter,
                least,
                most,
                decimals,
                asked,
                sides,
                how,
                pictures,
                readAs,
                purposes,
                regions,
                norms,
                cutOffs.stream().map(each -> each.following(group)).toList(),
                scales,
                meaningful);
    }

    public boolean asks(Asked what) {
        return asked.contains(what);
    }
}
