package newel.catalogue;

import java.util.List;

/**
 * A family of variants with one purpose.
 *
 * @param why what it is good for in daily life, in the client's words
 * @param claims every claim with its source, or marked common practice
 * @param standingOnly why nobody can do it seated or lying; empty for most movements
 */
public record Movement(
        String id,
        String name,
        String why,
        Kind kind,
        Purposes purposes,
        String reference,
        List<Fault> faults,
        List<String> claims,
        String standingOnly,
        List<Variant> variants) {}
