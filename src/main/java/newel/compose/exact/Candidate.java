package newel.compose.exact;

/**
 * What may stand in a slot.
 *
 * @param id unique within its slot; ties are decided by it
 * @param family at most one of a family is chosen; empty for none
 * @param seconds a multiple of the grid
 * @param state decides penalties and seconds between neighbours
 * @param serves demands served, bit d for the demand with index d
 * @param standing seconds that it lengthens a run of standing by; 0 ends the run
 * @param armsUp the same for raised arms
 */
public record Candidate(
        String id, String family, int points, int seconds, int state, int serves, int standing, int armsUp) {}
