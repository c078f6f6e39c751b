package newel.assess;

import java.util.List;
import newel.source.Finding;

/** Where to begin, and the results that say so. */
public record StartingLevel(Start start, List<Finding> because) {}
