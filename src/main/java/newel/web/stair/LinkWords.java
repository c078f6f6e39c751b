package newel.web.stair;

import newel.catalogue.Axis;

/** In what way the other end of a link is easier, or harder. */
public final class LinkWords {
    public static String down(Axis axis) {
        return switch (axis) {
            case POSITION -> "easier position";
            case SUPPORT -> "more support";
            case RANGE -> "shorter range";
            case LEVER -> "shorter lever";
            case LOAD -> "less load";
            case SPEED -> "slower, or sooner over";
            case STANCE -> "wider stance";
            case COORDINATION -> "simpler";
        };
    }

    public static String up(Axis axis) {
        return switch (axis) {
            case POSITION -> "harder position";
            case SUPPORT -> "less support";
            case RANGE -> "longer range";
            case LEVER -> "longer lever";
            case LOAD -> "more load";
            case SPEED -> "faster, or longer";
            case STANCE -> "narrower stance";
            case COORDINATION -> "more to coordinate";
        };
    }

    private LinkWords() {}
}
