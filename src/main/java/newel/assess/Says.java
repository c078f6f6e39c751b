package newel.assess;

/**
 * What a table makes of a result.
 *
 * @param code for other programs
 * @param words for the instructor, to follow the name of the test
 */
public record Says(String code, String words) {}
