package newel.compose;

import newel.catalogue.Kind;
import newel.catalogue.Trait;

/** A hard rule on what may stand where. */
enum PlaceRule {
    BELONGS("Each part holds its own kind of movement") {
        @Override
        boolean keeps(Context context, Place place, Option option) {
            return option.parts().contains(place.kind()) && (option.kept() || place.last() == option.calm());
        }
    },
    STARTS_EASY("The warm-up starts easy") {
        @Override
        boolean keeps(Context context, Place place, Option option) {
            boolean easy = option.variant().effort() <= 2 && option.variant().coordination() <= 2 && !option.fast();
            return place.kind() != BlockKind.WARM_UP || !place.first() || easy;
        }
    },
    WARMS_GENTLY("The warm-up stays light") {
        @Override
        boolean keeps(Context context, Place place, Option option) {
            return place.kind() != BlockKind.WARM_UP
                    || option.variant().effort() <= 4
                            && !option.variant().traits().contains(Trait.STRAIN);
        }
    },
    COOLS_GENTLY("The cool-down stays light") {
        @Override
        boolean keeps(Context context, Place place, Option option) {
            return place.kind() != BlockKind.COOL_DOWN || option.variant().effort() <= 2;
        }
    },
    NOT_HARD_FIRST("Harder leverage or faster moves are not first") {
        @Override
        boolean keeps(Context context, Place place, Option option) {
            boolean first = place.kind() == BlockKind.ROUND && place.block() == 1 && place.first();
            return !first || option.variant().effort() <= 5 && !option.fast();
        }
    },
    BURSTS_LATE("Pulse bursts end a round") {
        @Override
        boolean keeps(Context context, Place place, Option option) {
            return place.kind() != BlockKind.ROUND || option.kind() != Kind.PULSE || place.index() >= 2;
        }
    },
    TAKES_TURNS("In a round upper and lower body take turns") {
        @Override
        boolean keeps(Context context, Place place, Option option) {
            boolean lower = (place.block() + place.index()) % 2 == 1;
            return place.kind() != BlockKind.ROUND
                    || option.kind() == Kind.PULSE
                    || (lower ? !option.upper() || option.lower() : !option.lower() || option.upper());
        }
    },
    HARD_BALANCE_EARLY("Hard balance comes first in the balance part, so that the last item on the feet is none") {
        @Override
        boolean keeps(Context context, Place place, Option option) {
            return !option.hardBalance() || place.kind() == BlockKind.BALANCE && place.first() && place.least() >= 2;
        }
    },
    RESTED("48 hours between hard loads of a muscle group") {
        @Override
        boolean keeps(Context context, Place place, Option option) {
            return !option.hard()
                    || context.wish().hard().containsAll(option.stance().mains());
        }
    };

    private final String title;

    PlaceRule(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }

    abstract boolean keeps(Context context, Place place, Option option);

    /** Whether it yields where too few movements would be left for a place. */
    boolean yields() {
        return switch (this) {
            case STARTS_EASY, BURSTS_LATE, TAKES_TURNS -> true;
            case BELONGS, WARMS_GENTLY, COOLS_GENTLY, NOT_HARD_FIRST, HARD_BALANCE_EARLY, RESTED -> false;
        };
    }

    /** What the instructor keeps is bound to its part alone. */
    static boolean all(Context context, Place place, Option option, boolean yielding) {
        for (PlaceRule rule : values()) {
            boolean asked = rule == BELONGS || !option.kept() && !(yielding && rule.yields());
            if (asked && !rule.keeps(context, place, option)) {
                return false;
            }
        }
        return true;
    }
}
