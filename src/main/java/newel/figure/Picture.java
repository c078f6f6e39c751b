package newel.figure;

import java.util.List;

/** The frames of one variant, start to finish, with words for those who do not see them. */
public record Picture(String title, String description, List<Frame> frames) {}
