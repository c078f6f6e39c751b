package newel.catalogue;

import java.util.List;
import java.util.stream.Stream;

/** One thing that must hold of a movement as it is written; it lists every place where it does not. */
interface Rule {
    /** These bear half-read data. */
    List<Rule> ALL = List.of(
            new LinkedUp(),
            new EasyForms(),
            new WholeWords(),
            new PlainWords(),
            new ShortLines(),
            new VerbFirst(),
            new EverydayWords(),
            new SoundFaults(),
            new SourcedClaims(),
            new BreathAtEffort(),
            new SoundDose(),
            new SoundPoses());

    Stream<Flaw> flaws(Movement movement);

    static Stream<Flaw> broken(Movement movement) {
        return ALL.stream().flatMap(rule -> rule.flaws(movement));
    }

    static Flaw flaw(Movement movement, String id, String what) {
        return new Flaw(movement.id() + ".yaml", id, what);
    }

    static Flaw flaw(Variant variant, String what) {
        return new Flaw(variant.movement() + ".yaml", variant.id(), what);
    }
}
