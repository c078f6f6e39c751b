package newel.screen;

import newel.source.Finding;

/** What the pain of one session says about the next. */
public sealed interface PainOutcome {
    Finding finding();

    /** In the safe zone and settled: the next step may be taken. */
    record Progress(Finding finding) implements PainOutcome {}

    /** Acceptable: the load stays. */
    record Keep(Finding finding) implements PainOutcome {}

    /** Not too much, and the morning is not told yet. */
    record AskNextMorning(Finding finding) implements PainOutcome {}

    /** One step easier. */
    record Reduce(Finding finding) implements PainOutcome {}

    /** Stop this exercise and let somebody look. */
    record StopAndRefer(Finding finding) implements PainOutcome {}

    /** The model was not made for this pain; it is treated as the sign that it may be. */
    record NotForThisModel(Finding finding, Urgency urgency) implements PainOutcome {}
}
