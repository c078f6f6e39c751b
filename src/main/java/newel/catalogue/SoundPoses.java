package newel.catalogue;

import java.util.stream.Stream;
import newel.body.Part;

/** A variant has one to five key poses, and its trim says how little still does the work. */
final class SoundPoses implements Rule {
    /** Getting down to the floor takes five; most take two (design choice). */
    private static final int MOST = 5;

    @Override
    public Stream<Flaw> flaws(Movement movement) {
        return movement.variants().stream().flatMap(SoundPoses::flaws);
    }

    private static Stream<Flaw> flaws(Variant variant) {
        Stream.Builder<Flaw> flaws = Stream.builder();
        int poses = variant.keyPoses().size();
        if (poses < 1 || poses > MOST) {
            flaws.add(Rule.flaw(variant, "it has " + poses + " key poses; 1 to " + MOST + " are wanted"));
        }
        Trim trim = variant.trim();
        if (trim.least() <= 0 || trim.least() > 1 || trim.part() == Part.NONE != (trim.least() == 1)) {
            flaws.add(Rule.flaw(variant, "the trim makes no sense: " + trim));
        }
        return flaws.build();
    }
}
