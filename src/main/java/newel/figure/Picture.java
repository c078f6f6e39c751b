package newel.figure;

import java.util.List;

/**
 * The frames of one variant, start to finish, with words for those who do not see them.
 *
 * @param style classes of the style sheet for skin, hair and clothes
 */
public record Picture(String title, String description, String style, List<Frame> frames) {
    /** The frame of the last pose. */
    public Frame finish() {
        return frames.stream().filter(frame -> !frame.again()).toList().getLast();
    }
}
