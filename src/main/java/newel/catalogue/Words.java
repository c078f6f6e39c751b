package newel.catalogue;

import java.util.List;

/** What the client reads. Stop is a stop sign of this movement's own. */
public record Words(List<String> setUp, List<String> steps, String breathing, String feel, String stop) {}
