package newel.assess;

import java.math.BigDecimal;
import newel.client.Sex;
import newel.source.Known;

/**
 * The figures of one age band and one sex.
 *
 * @param sex null for both
 * @param worse the only figure of a cut-off; of a range its worse end, which is the greater one where less is better
 * @param better the better end of a range; the same as worse for a cut-off
 * @param unsure it has been printed in more than one version
 */
public record Row(Ages ages, Sex sex, BigDecimal worse, BigDecimal better, Known known, boolean unsure) {
    public boolean holdsFor(int age, Sex person) {
        return ages.hold(age) && (sex == null || sex == person);
    }

    boolean overlaps(Row other) {
        return ages.overlap(other.ages) && (sex == null || other.sex == null || sex == other.sex);
    }
}
