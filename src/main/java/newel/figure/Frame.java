package newel.figure;

import java.util.List;

/** One drawing: a caption of one or two words, its window into the picture, and its marks. */
public record Frame(String caption, double left, double top, double width, double height, List<Mark> marks) {
    public String window() {
        return String.join(" ", Mark.number(left), Mark.number(top), Mark.number(width), Mark.number(height));
    }

    public String widthText() {
        return Mark.number(width);
    }

    public String heightText() {
        return Mark.number(height);
    }
}
