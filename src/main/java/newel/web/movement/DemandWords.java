package newel.web.movement;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import newel.body.Demands;
import newel.body.Joint;
import newel.body.Motion;
import newel.body.Side;
import newel.catalogue.Axis;
import newel.catalogue.Quiet;
import newel.catalogue.Variant;
import newel.web.form.Choice;
import newel.web.limitation.MotionWords;

/** Demands in words and figures. */
final class DemandWords {
    /** A load up to this many times the quiet one is told as much like it. */
    private static final double MUCH_LIKE = 1.15;

    static String of(Joint joint) {
        return "Load on the " + MovementWords.plain(joint);
    }

    /** In percent of body weight times height. */
    static String load(double bodyWeightHeight) {
        return String.format(Locale.ROOT, "%.2f %%", 100 * bodyWeightHeight);
    }

    /** A load beside the one that sitting or standing quietly asks. */
    static String beside(Joint joint, double load) {
        double times = load / Quiet.load(joint);
        if (times <= 1) {
            return "no more than sitting or standing quietly";
        }
        return times < MUCH_LIKE
                ? "much like sitting or standing quietly"
                : String.format(Locale.ROOT, "%.1f times sitting or standing quietly", times);
    }

    static String degrees(double degrees) {
        return Math.round(degrees) + "°";
    }

    /** How a named demand differs between two forms: "Raises the arm: 120°, then 80°". */
    static String change(String name, Form from, Form to) {
        return motion(name)
                .map(motion -> told(MotionWords.of(motion), from, to, form -> degrees(most(form.demands(), motion))))
                .or(() ->
                        joint(name).map(joint -> told(of(joint), from, to, form -> load(most(form.demands(), joint)))))
                .orElseGet(() -> other(name, from, to));
    }

    /** What the link itself is about, where no demand tells it; empty otherwise. */
    static String axis(Axis axis, Form from, Form to) {
        return switch (axis) {
            case SUPPORT ->
                told(
                        "Support",
                        from,
                        to,
                        form -> MovementWords.of(form.variant().support()));
            case STANCE -> told("Base", from, to, form -> percent(form.demands().baseWidth()) + " of body height wide");
            case SPEED ->
                told(
                        "One time",
                        from,
                        to,
                        form -> seconds(form.variant().tempo().seconds()));
            case POSITION, RANGE, LEVER, LOAD, COORDINATION -> "";
        };
    }

    private static String seconds(double seconds) {
        return seconds == Math.rint(seconds) ? "%d s".formatted((long) seconds) : seconds + " s";
    }

    /** A form with what it asks. */
    record Form(Variant variant, Demands demands) {}

    private static String other(String name, Form from, Form to) {
        return switch (name) {
            case "hold" -> told("Longest hold", from, to, form -> form.variant().holdSeconds() + " s");
            case "coordination" ->
                told("Coordination", from, to, form -> form.variant().coordination() + " of 3");
            case "grip" ->
                told("Grip", from, to, form -> MovementWords.of(form.variant().grip()));
            case "position" ->
                told(
                        "Position",
                        from,
                        to,
                        form -> MovementWords.of(form.variant().position()));
            case "support" ->
                told(
                        "Support",
                        from,
                        to,
                        form -> MovementWords.of(form.variant().support()));
            case "hands" ->
                told(
                        "Body weight on one hand",
                        from,
                        to,
                        form -> percent(form.demands().handShare()));
            case "held" -> told("Weight in the hands", from, to, form -> percent(held(form.variant())));
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static String told(String what, Form from, Form to, Function<Form, String> figure) {
        return what + ": " + figure.apply(from) + ", then " + figure.apply(to);
    }

    /** Of body weight. */
    static String percent(double share) {
        return String.format(Locale.ROOT, share < 0.095 ? "%.1f %%" : "%.0f %%", 100 * share);
    }

    private static double held(Variant variant) {
        return variant.keyPoses().stream()
                .mapToDouble(pose -> pose.contacts().heldMass())
                .max()
                .orElse(0);
    }

    static double most(Demands demands, Motion motion) {
        return Math.max(demands.angle(motion, Side.LEFT), demands.angle(motion, Side.RIGHT));
    }

    static double most(Demands demands, Joint joint) {
        return Math.max(demands.load(joint, Side.LEFT), demands.load(joint, Side.RIGHT));
    }

    private static Optional<Motion> motion(String name) {
        return Choice.read(Motion.class, name);
    }

    private static Optional<Joint> joint(String name) {
        return Arrays.stream(Joint.values())
                .filter(joint -> Choice.of(joint).equals(name))
                .findFirst();
    }

    private DemandWords() {}
}
