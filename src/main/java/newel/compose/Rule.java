package newel.compose;

import java.util.function.BiPredicate;

/** A wish or a limit that has to hold, and that may turn out to clash with others. */
sealed interface Rule {
    /** As it is named where it clashes. */
    String words();

    /** How much is lost when it is given up; what never is given up has no price. */
    int price();

    int NEVER = Integer.MAX_VALUE;

    /** At least so many items serve something. */
    record Asked(String words, int price, int least, BiPredicate<Option, BlockKind> serves) implements Rule {}

    /** The session ends within its minutes. */
    record WithinMinutes(int minutes) implements Rule {
        @Override
        public String words() {
            return "No longer than %d minutes".formatted(minutes);
        }

        @Override
        public int price() {
            return NEVER;
        }
    }

    /** The session fills its minutes. */
    record Filled(int minutes) implements Rule {
        @Override
        public String words() {
            return "Nine tenths of %d minutes are used".formatted(minutes);
        }

        @Override
        public int price() {
            return 1;
        }
    }

    /** Two or more in each end, three or more in a round: the shape of a whole session. */
    record WholeShape() implements Rule {
        @Override
        public String words() {
            return "Rounds of three or more movements, and two or more before and after them";
        }

        @Override
        public int price() {
            return 3;
        }
    }

    /** A movement that the instructor has ruled out. */
    record Banned(String movement, String name) implements Rule {
        @Override
        public String words() {
            return "Without " + name;
        }

        @Override
        public int price() {
            return NEVER;
        }
    }

    /** A limitation, the home, or what has to wait. */
    record Limited(String whose) implements Rule {
        @Override
        public String words() {
            return whose;
        }

        @Override
        public int price() {
            return NEVER;
        }
    }
}
