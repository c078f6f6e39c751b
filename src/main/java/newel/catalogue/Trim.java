package newel.catalogue;

import newel.body.Part;

/** Which part may be done through part of its way, and the least share (0 to 1) that still does its work. */
public record Trim(Part part, double least) {
    public static final Trim NONE = new Trim(Part.NONE, 1);
}
