package newel.web.program;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import newel.catalogue.Catalogue;
import newel.catalogue.Kind;
import newel.catalogue.Movement;
import newel.catalogue.Purpose;
import newel.web.form.Typed;
import newel.web.movement.MovementWords;

/**
 * The form of what composing is asked for.
 *
 * @param wished what the client said at intake
 * @param faultAt the field that the fault is about; empty for none
 * @param in movements that are always in
 * @param out movements that stay out
 */
public record BriefCard(
        String minutes,
        int wished,
        String fault,
        String faultAt,
        List<Pick> more,
        List<Pick> in,
        List<Pick> out,
        List<Group> movements) {
    public record Pick(String value, String name, boolean on) {}

    /** Movements of a kind to choose from. */
    public record Group(String name, List<Pick> movements) {}

    static BriefCard of(Catalogue catalogue, Typed typed, int wished, Refusal refusal) {
        boolean refused = refusal.about(Refusal.BRIEF);
        return new BriefCard(
                typed.one(BriefForm.MINUTES),
                wished,
                refused ? refusal.why() : "",
                refused ? refusal.field() : "",
                more(typed),
                ticked(catalogue, typed, BriefForm.IN, BriefForm.ALSO_IN),
                ticked(catalogue, typed, BriefForm.OUT, BriefForm.ALSO_OUT),
                groups(catalogue));
    }

    private static List<Pick> more(Typed typed) {
        return Arrays.stream(Purpose.values())
                .map(purpose -> new Pick(
                        BriefForm.value(purpose),
                        WeekCard.words(purpose),
                        typed.has(BriefForm.MORE, BriefForm.value(purpose))))
                .toList();
    }

    /** One that was chosen from the list is ticked the next time. */
    private static List<Pick> ticked(Catalogue catalogue, Typed typed, String ticked, String also) {
        List<String> ids = new ArrayList<>(typed.all(ticked));
        if (!typed.one(also).isEmpty() && !ids.contains(typed.one(also))) {
            ids.add(typed.one(also));
        }
        return ids.stream()
                .flatMap(id -> catalogue.movement(id).stream())
                .map(movement -> new Pick(movement.id(), movement.name(), true))
                .sorted(Comparator.comparing(Pick::name))
                .toList();
    }

    private static List<Group> groups(Catalogue catalogue) {
        return Arrays.stream(Kind.values())
                .map(kind -> new Group(
                        MovementWords.capital(MovementWords.plain(kind)),
                        catalogue.movements().stream()
                                .filter(movement -> movement.kind() == kind)
                                .sorted(Comparator.comparing(Movement::name))
                                .map(movement -> new Pick(movement.id(), movement.name(), false))
                                .toList()))
                .filter(group -> !group.movements().isEmpty())
                .toList();
    }
}
