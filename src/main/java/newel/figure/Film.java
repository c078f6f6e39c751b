package newel.figure;

import java.util.List;

/**
 * A movement as frames that follow each other at equal steps of the way, from the first key pose to the last. Where sides
 * take turns there are two passes, the second with the sides changed over.
 *
 * @param style classes of the style sheet for skin, hair and clothes
 * @param legs of the way, from key pose to key pose; each has as many frames
 */
public record Film(Bounds window, String style, int legs, List<List<List<Mark>>> passes) {
    public int frames() {
        return passes.getFirst().size();
    }
}
