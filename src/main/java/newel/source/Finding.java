package newel.source;

/** What a rule found in this client, in one plain sentence. */
public record Finding(Rule rule, String text) {}
