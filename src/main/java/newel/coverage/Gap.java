package newel.coverage;

/** Nothing fits in one place of the table. Why says what makes it so, or is empty where nobody has explained it. */
public record Gap(String row, Served serves, String why) {
    public boolean explained() {
        return !why.isBlank();
    }

    @Override
    public String toString() {
        return row + ", " + serves + ": " + (explained() ? why : "nobody has explained this gap");
    }
}
