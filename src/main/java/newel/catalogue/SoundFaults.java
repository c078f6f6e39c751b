package newel.catalogue;

import java.util.stream.Stream;

/** A movement knows at least two common faults, each with its correction, and says where its claims come from. */
final class SoundFaults implements Rule {
    private static final int LEAST = 2;

    @Override
    public Stream<Flaw> flaws(Movement movement) {
        Stream.Builder<Flaw> flaws = Stream.builder();
        if (movement.faults().size() < LEAST) {
            flaws.add(Rule.flaw(
                    movement,
                    movement.id(),
                    "it knows " + movement.faults().size() + " faults; " + LEAST + " are wanted"));
        }
        if (movement.faults().stream()
                .anyMatch(fault -> fault.fault().isBlank() || fault.correction().isBlank())) {
            flaws.add(Rule.flaw(movement, movement.id(), "a fault lacks its correction"));
        }
        if (movement.claims().isEmpty()) {
            flaws.add(Rule.flaw(movement, movement.id(), "no source or common practice is named"));
        }
        return flaws.build();
    }
}
