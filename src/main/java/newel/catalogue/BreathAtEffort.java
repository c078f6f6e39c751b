package newel.catalogue;

import java.util.Collections;
import java.util.stream.Stream;

/** The legs that breathe out are there, and the words speak of breathing out where the data does. */
final class BreathAtEffort implements Rule {
    @Override
    public Stream<Flaw> flaws(Movement movement) {
        return movement.variants().stream().flatMap(BreathAtEffort::flaws);
    }

    private static Stream<Flaw> flaws(Variant variant) {
        Breath breath = variant.breath();
        int legs = Math.max(0, variant.keyPoses().size() - 1);
        Stream.Builder<String> flaws = Stream.builder();
        if (!breath.outOnLegs().isEmpty() && Collections.max(breath.outOnLegs()) > legs) {
            flaws.add("it breathes out on leg " + Collections.max(breath.outOnLegs()) + " of " + legs);
        }
        if (!breath.even() && !speaksOfOut(variant)) {
            flaws.add("it breathes out, but its words do not say when: "
                    + variant.words().breathing());
        }
        return flaws.build().map(what -> Rule.flaw(variant, what));
    }

    private static boolean speaksOfOut(Variant variant) {
        return Reading.words(variant.words().breathing()).anyMatch(word -> word.equals("out"));
    }
}
