package newel.catalogue;

import java.util.List;

/**
 * One step down to an easier variant, along an axis.
 *
 * @param rises the names of demands (motions, joints, `hold`, `coordination`, `grip`, `position`, `support`, `hands`, `held`)
 *     that the easier variant asks more of, said openly
 */
public record Link(Axis axis, String easier, List<String> rises) {}
