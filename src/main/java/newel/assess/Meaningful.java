package newel.assess;

import java.math.BigDecimal;
import newel.source.Rule;

/** How much of a change is more than chance and the day. */
public record Meaningful(Rule rule, String population, BigDecimal small, BigDecimal substantial) {}
