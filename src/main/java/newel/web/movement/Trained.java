package newel.web.movement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import newel.catalogue.Purpose;
import newel.catalogue.Purposes;

/** What something trains, the most first, then what it keeps moving. */
final class Trained {
    static List<MovementPage.Trained> of(Purposes purposes) {
        List<MovementPage.Trained> rows = new ArrayList<>();
        Arrays.stream(Purpose.values())
                .filter(purpose -> purposes.weight(purpose) > 0)
                .sorted(Comparator.comparingInt(purpose -> -purposes.weight(purpose)))
                .forEach(purpose -> rows.add(row(purpose, purposes.weight(purpose))));
        purposes.mobility().stream()
                .sorted()
                .map(region ->
                        new MovementPage.Trained(MovementWords.capital(MovementWords.plain(region)), "kept moving", 0))
                .forEach(rows::add);
        return rows;
    }

    private static MovementPage.Trained row(Purpose purpose, int weight) {
        String how = weight >= 3 ? "mainly" : weight == 2 ? "strongly" : "a little";
        return new MovementPage.Trained(MovementWords.capital(MovementWords.plain(purpose)), how, weight);
    }

    private Trained() {}
}
