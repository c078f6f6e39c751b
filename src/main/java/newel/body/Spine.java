package newel.body;

/** One part of the spine against the part below, degrees: flexion forward, side bend and turn to the right positive. */
public record Spine(double flex, double side, double turn) {
    public static final Spine STRAIGHT = new Spine(0, 0, 0);
}
