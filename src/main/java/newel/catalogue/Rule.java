package newel.catalogue;

import java.util.List;
import java.util.stream.Stream;

/** One thing that must hold of a movement; it lists every place where it does not. */
interface Rule {
    /** Rules on what is written; they bear half-read data. */
    List<Rule> WRITTEN = List.of(
            new LinkedUp(),
            new EasyForms(),
            new WholeWords(),
            new PlainWords(),
            new SoundFaults(),
            new SoundDose(),
            new SoundPoses());

    /** Rules on the solved body; they need a movement that was read without a flaw. */
    List<Rule> EMBODIED =
            List.of(new InRange(), new OnBalance(), new WithinReach(), new NothingThrough(), new TrueLinks());

    Stream<Flaw> flaws(Movement movement);

    static Stream<Flaw> broken(List<Rule> rules, Movement movement) {
        return rules.stream().flatMap(rule -> rule.flaws(movement));
    }

    static Flaw flaw(Movement movement, String id, String what) {
        return new Flaw(movement.id() + ".yaml", id, what);
    }

    static Flaw flaw(Variant variant, String what) {
        return new Flaw(variant.movement() + ".yaml", variant.id(), what);
    }
}
