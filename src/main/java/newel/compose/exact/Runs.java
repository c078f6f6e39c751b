package newel.compose.exact;

/** How long one stands, and how long the arms are up, without a break. */
final class Runs {
    /** Who goes on standing stands through the pause as well; after a break the run begins anew. */
    static int standing(Column column, int c, int before) {
        int own = column.standing[c];
        boolean goesOn = own > 0 && before > 0 && !column.fresh;
        return goesOn ? before + column.pause + own : own;
    }

    /** Arms come down in the pause, but too shortly to count as a break. */
    static int armsUp(Column column, int c, int before) {
        int own = column.armsUp[c];
        return own > 0 && !column.fresh ? before + own : own;
    }

    static boolean tooLong(Problem.Endurance most, int standing, int armsUp) {
        return standing > most.standing() || armsUp > most.armsUp();
    }

    private Runs() {}
}
