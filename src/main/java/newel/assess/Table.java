package newel.assess;

import java.util.List;
import java.util.Optional;
import newel.client.Sex;
import newel.source.Rule;

/** Published figures about one test, from one source. */
public sealed interface Table permits Norm, CutOff, Scale {
    Rule rule();

    /** Whose figures they are. */
    String population();

    List<Row> rows();

    default Optional<Row> row(int age, Sex sex) {
        return rows().stream().filter(row -> row.holdsFor(age, sex)).findFirst();
    }
}
