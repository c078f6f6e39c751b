package newel.handout;

import java.util.List;
import newel.figure.Picture;

/**
 * One movement on the paper.
 *
 * @param pace how fast and how hard
 * @param range how far to go, where it is not the whole way; empty otherwise
 * @param careful a caution of the instructor's for a movement kept with a reason; empty otherwise
 */
public record Sheet(
        int number,
        String name,
        String why,
        Picture picture,
        String dose,
        String pace,
        String range,
        List<String> setUp,
        List<String> steps,
        String breathing,
        String stop,
        String careful) {}
