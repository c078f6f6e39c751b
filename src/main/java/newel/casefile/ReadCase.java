package newel.casefile;

import java.util.List;
import newel.client.Client;

/** What reading a case file gave. */
public sealed interface ReadCase {
    record Read(Client client) implements ReadCase {}

    /** @param faults one a line, each with its JSON path */
    record Faulty(List<String> faults) implements ReadCase {}
}
