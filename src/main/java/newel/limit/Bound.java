package newel.limit;

/**
 * A limit that holds for a person, and whose words it rests on.
 *
 * @param limitation id of the limitation; empty when it is the home
 * @param whose for the end of a reason, such as "(shoulder pain, logged 3 March 2026, from you)" or "at home"
 */
public record Bound(Limit limit, String limitation, String whose) {

    static Bound of(Limit limit, Limitation from) {
        return new Bound(limit, from.id(), "(" + Whose.of(from) + ")");
    }

    static Bound screening(Limit limit) {
        return new Bound(limit, "", "(readiness and falls check)");
    }

    static Bound home(Limit limit) {
        return new Bound(limit, "", "at home");
    }
}
