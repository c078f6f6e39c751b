package newel.handout;

import java.util.Locale;
import java.util.regex.Pattern;
import newel.catalogue.Variant;
import newel.figure.Scene;

/** Which side works, as the words say it: a stretched arm may keep still while the body turns away from it. */
final class WorkingSide {
    private static final Pattern ARM = Pattern.compile("right (arm|hand|palm|elbow|forearm|fist|fingers|fingertips)");
    private static final Pattern LEG = Pattern.compile("right (leg|foot|heel|knee|thigh|shin|ankle|toes|calf|hip)");
    private static final Pattern TURN = Pattern.compile("to the (right|left)|turn (your )?(head|chest|chin)");

    static Scene.Working of(Variant variant) {
        return switch (variant.sides()) {
            case TOGETHER -> Scene.Working.TOGETHER;
            case ALTERNATING -> Scene.Working.ALTERNATING;
            case EACH -> oneSide(variant);
        };
    }

    private static Scene.Working oneSide(Variant variant) {
        String words = (String.join(" ", variant.words().setUp()) + " "
                        + String.join(" ", variant.words().steps()))
                .toLowerCase(Locale.ROOT);
        long arm = ARM.matcher(words).results().count();
        long leg = LEG.matcher(words).results().count();
        if (TURN.matcher(words).find() || arm == leg) {
            return Scene.Working.ONE_SIDE;
        }
        return arm > leg ? Scene.Working.RIGHT_ARM : Scene.Working.RIGHT_LEG;
    }

    private WorkingSide() {}
}
