package newel.figure;

import java.util.List;

/**
 * One drawing: a caption of one or two words, its window into the picture, and its marks.
 *
 * @param again it shows the last pose once more, from elsewhere
 */
public record Frame(String caption, Bounds bounds, List<Mark> marks, boolean again) {
    public String window() {
        return String.join(" ", Mark.number(bounds.left()), Mark.number(bounds.top()), widthText(), heightText());
    }

    public double width() {
        return bounds.width();
    }

    public double height() {
        return bounds.height();
    }

    public String widthText() {
        return Mark.number(width());
    }

    public String heightText() {
        return Mark.number(height());
    }
}
