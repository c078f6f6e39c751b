/** The intake: one calm page a step, every answer kept at once, and a summary to check before it counts. */
package newel.web.intake;
