package newel.catalogue;

/** Something wrong in the catalogue's data: in which file, at which movement or variant, and what. */
public record Flaw(String file, String id, String what) {
    @Override
    public String toString() {
        return file + ": " + (id.isEmpty() ? "" : id + ": ") + what;
    }
}
