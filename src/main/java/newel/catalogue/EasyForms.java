package newel.catalogue;

import java.util.stream.Stream;

/**
 * Every way down ends seated or lying, and a movement that is done standing is also done standing with support, unless it
 * says why nobody can.
 */
final class EasyForms implements Rule {
    @Override
    public Stream<Flaw> flaws(Movement movement) {
        return movement.standingOnly().isEmpty() ? Stream.concat(ends(movement), supported(movement)) : Stream.empty();
    }

    private static Stream<Flaw> ends(Movement movement) {
        return movement.variants().stream()
                .filter(variant -> variant.easier().isEmpty() && onFeet(variant))
                .map(variant -> Rule.flaw(variant, "nothing is easier, and it is not done seated or lying"));
    }

    private static Stream<Flaw> supported(Movement movement) {
        boolean free = movement.variants().stream().anyMatch(EasyForms::onFeet);
        boolean held =
                movement.variants().stream().anyMatch(variant -> onFeet(variant) && variant.support() != Support.NONE);
        return free && !held
                ? Stream.of(Rule.flaw(movement, movement.id(), "it is done standing, but never standing with support"))
                : Stream.empty();
    }

    private static boolean onFeet(Variant variant) {
        return switch (variant.position()) {
            case STANDING, STEPPING -> true;
            case LYING, SEATED_BACK, SEATED_EDGE, FLOOR -> false;
        };
    }
}
