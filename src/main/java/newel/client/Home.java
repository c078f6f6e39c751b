package newel.client;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import newel.catalogue.Kit;
import newel.limit.Avoidance;
import newel.limit.Limit;

/**
 * What the home has room and things for.
 *
 * @param floor whether the client gets down to the floor and up again
 * @param clearMetres clear floor beside the chair
 */
public record Home(Set<Kit> kit, int ceilingCm, Answer floor, double clearMetres) {
    /** Air kept between fingertips and ceiling, centimetres (design choice). */
    public static final int CEILING_GAP_CM = 5;

    /** What the home rules out for somebody of this stature. */
    public List<Limit> limits(int statureCm) {
        List<Limit> limits = new ArrayList<>();
        limits.add(new Limit.KitAtHome(kit));
        limits.add(new Limit.Ceiling((double) (ceilingCm - CEILING_GAP_CM) / statureCm, ceilingCm, statureCm));
        limits.add(new Limit.ClearSpace(clearMetres));
        if (!floor.yes()) {
            limits.add(new Limit.Avoid(Avoidance.FLOOR));
        }
        return List.copyOf(limits);
    }
}
