package newel.limit;

import java.util.Locale;
import java.util.Optional;

/** What a logged limitation is called, as people speak. */
public final class Called {
    private static final Presets PRESETS = Presets.read();

    /** What it is and on which side, and what was said where that is more: "Shoulder pain, left side (“It aches at night”)". */
    public static String of(Limitation limitation) {
        Optional<Preset> preset = PRESETS.find(limitation.preset());
        String said = limitation.words().strip();
        if (preset.isEmpty()) {
            return said + side(limitation);
        }
        String what = preset.get().spoken(limitation.side());
        String whole = Wording.capital(what) + (preset.get().tellsSide() ? "" : side(limitation));
        boolean more = !said.equals(preset.get().name()) && !said.equalsIgnoreCase(what);
        return more ? whole + " (“" + said + "”)" : whole;
    }

    /** For the middle of a sentence, without the side where the sentence tells it: "shoulder pain". */
    static String within(Limitation limitation) {
        return PRESETS.find(limitation.preset())
                .map(preset -> preset.spoken(limitation.side()))
                .orElse(limitation.words().strip());
    }

    private static String side(Limitation limitation) {
        return limitation.side() == Sided.BOTH
                ? ""
                : ", " + limitation.side().name().toLowerCase(Locale.ROOT) + " side";
    }

    private Called() {}
}
