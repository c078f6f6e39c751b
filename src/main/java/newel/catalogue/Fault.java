package newel.catalogue;

/** A common fault and what to say about it. */
public record Fault(String fault, String correction) {}
