package newel.program;

/** A program's key. */
public record ProgramId(String value) {}
