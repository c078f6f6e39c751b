package newel.catalogue;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import newel.body.Base;
import newel.body.Demands;
import newel.body.Masses;
import newel.body.Path;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Statics;
import newel.body.Vec;

/** A variant as the body does it: solved along its path. */
record Doing(Variant variant, List<Posed> keys, List<Posed> samples, Demands demands) {
    static Doing of(Variant variant) {
        Path path = new Path(variant.keyPoses());
        List<Posed> samples = path.samples(Statics.STEPS);
        return new Doing(variant, path.keys(), samples, Statics.demandsOf(samples, Masses.WINTER));
    }

    /** One flaw for the first key pose where something is wrong, so that a fault of the whole path is told once. */
    Stream<Flaw> firstKey(Predicate<Posed> wrong, Function<Posed, String> what) {
        return IntStream.range(0, keys.size())
                .filter(i -> wrong.test(keys.get(i)))
                .limit(1)
                .mapToObj(i ->
                        Rule.flaw(variant, "'" + variant.keyPoses().get(i).name() + "': " + what.apply(keys.get(i))));
    }

    /** The greatest way that pelvis, neck, a palm or an ankle goes from where it starts, statures. */
    double travel() {
        Posed start = samples.getFirst();
        double most = 0;
        for (Posed posed : samples) {
            List<Vec> from = points(start);
            List<Vec> to = points(posed);
            for (int i = 0; i < from.size(); i++) {
                most = Math.max(most, from.get(i).distance(to.get(i)));
            }
        }
        return most;
    }

    /** The smallest base of support on the way, square statures. */
    double baseArea() {
        return samples.stream()
                .mapToDouble(posed -> Base.of(posed).area())
                .min()
                .orElseThrow();
    }

    private static List<Vec> points(Posed posed) {
        return List.of(
                posed.trunk().pelvis(),
                posed.trunk().c7(),
                posed.trunk().nose(),
                posed.arm(Side.RIGHT).palm(),
                posed.arm(Side.LEFT).palm(),
                posed.leg(Side.RIGHT).ankle(),
                posed.leg(Side.LEFT).ankle());
    }
}
