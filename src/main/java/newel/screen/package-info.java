/**
 * What may go on, what must wait and for whom: readiness, signs at rest, falls risk and red flags.
 *
 * <p>Every rule names its source and how well it is known. The rules come from published guidance and no clinician has
 * reviewed them here: they screen and hand over, they never diagnose. An unanswered question is never read as no. Where two
 * readings are possible the careful one is taken: easier, or stop.
 */
package newel.screen;
