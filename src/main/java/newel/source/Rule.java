package newel.source;

/** A rule with where it comes from; its cut-off is its own and belongs to no other rule. */
public record Rule(String id, String citation, Known known) {}
