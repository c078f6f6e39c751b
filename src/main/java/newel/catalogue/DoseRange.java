package newel.catalogue;

/** The dose to begin with and the dose to grow to. */
public record DoseRange(Dose beginner, Dose later) {}
