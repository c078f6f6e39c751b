package newel.assess;

import java.util.List;

/**
 * How a test is run, in our own words, for the instructor.
 *
 * @param tells what it tells
 * @param say what to say to the client
 * @param count when the watch runs and what counts
 * @param notFor who does not do it
 */
public record HowTo(
        String tells,
        List<String> needs,
        List<String> setUp,
        List<String> say,
        List<String> count,
        List<String> stop,
        List<String> notFor) {}
