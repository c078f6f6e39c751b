package newel.handout;

import java.util.List;

/**
 * When to stop, on every paper. After the general indications for stopping exercise of the American College of Sports
 * Medicine and the signs of stroke (FAST), in our own words.
 */
final class StopSigns {
    static final List<String> ALL = List.of(
            "Pain or pressure in your chest, neck, jaw or arm.",
            "You feel faint, dizzy, sick or cold and sweaty.",
            "You are much more out of breath than the move should make you.",
            "Your heart beats in a strange way.",
            "Sudden weakness, a face that droops, or speech that slurs.",
            "Sharp pain, or pain that goes above 5 out of 10.");

    private StopSigns() {}
}
