package newel.program;

import java.util.List;
import java.util.Optional;
import newel.client.ClientId;

/** A client's program with all its versions, oldest first; there is always one. */
public record Program(ProgramId id, ClientId client, List<Version> versions) {
    public Program {
        versions = List.copyOf(versions);
        if (versions.isEmpty()) {
            throw new IllegalArgumentException("a program has at least one version");
        }
    }

    public Version newest() {
        return versions.getLast();
    }

    public Optional<Version> version(int number) {
        return versions.stream().filter(version -> version.number() == number).findFirst();
    }
}
