package newel.catalogue;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import newel.body.Ground;
import newel.body.Masses;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Statics;

/**
 * A person on their feet does not fall over: the centre of mass lies inside the base, unless a hand is on a support or the
 * variant leans on one.
 */
final class OnBalance implements BodyRule {
    @Override
    public Stream<Flaw> flaws(Movement movement, Map<String, Doing> doings) {
        return doings.values().stream()
                .flatMap(doing -> doing.firstKey(
                        posed -> margin(posed) < 0 && !steadied(doing.variant(), posed),
                        posed -> String.format(
                                Locale.ROOT, "the centre of mass is %.3f H outside the feet", -margin(posed))));
    }

    private static double margin(Posed posed) {
        return posed.contacts().ground() == Ground.FEET ? Statics.margin(posed, Masses.WINTER) : 1;
    }

    private static boolean steadied(Variant variant, Posed posed) {
        boolean hand = posed.contacts().hand(Side.RIGHT).hold().support()
                || posed.contacts().hand(Side.LEFT).hold().support();
        return hand || variant.support() != Support.NONE && leansBack(variant);
    }

    private static boolean leansBack(Variant variant) {
        return variant.kit().contains(Kit.WALL) || variant.kit().contains(Kit.COUNTER);
    }
}
