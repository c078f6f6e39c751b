package newel.screen;

import java.util.List;
import java.util.stream.Stream;
import newel.source.Rule;

/** What a practice has chosen where published sources disagree. */
public record Choices(RestSet restSet, FallsSet fallsSet, PainZones painZones) {

    /** What holds until a practice chooses: the strictest list at rest, falls as published, the lower pain zone. */
    public static Choices strict() {
        return new Choices(RestSet.INSTRUCTORS, FallsSet.AS_PUBLISHED, PainZones.LOWER);
    }

    public List<Rule> rules() {
        return Stream.of(restSet.rules(), fallsSet.rules(), painZones.rules())
                .flatMap(List::stream)
                .toList();
    }
}
