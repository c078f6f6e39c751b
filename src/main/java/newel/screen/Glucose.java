package newel.screen;

import java.math.BigDecimal;
import newel.client.Answer;

/**
 * What was asked of somebody whose medicine can make the sugar too low.
 *
 * @param value as it was measured, in the unit it was measured in: bounds are published in both and are not converted
 * @param ketones whether there are any that count: moderate or large, or 1.5 mmol/L or more in blood
 * @param helpedInADay a low sugar in the last 24 hours that needed another person
 * @param alone nobody is near during the session
 */
public record Glucose(BigDecimal value, Unit unit, Ketones ketones, Answer helpedInADay, Answer alone) {
    public enum Unit {
        MG_DL("mg/dL"),
        MMOL_L("mmol/L");

        private final String words;

        Unit(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public enum Ketones {
        NONE_OR_TRACE,
        MODERATE_OR_LARGE,
        NOT_KNOWN
    }

    public String told() {
        return value.stripTrailingZeros().toPlainString() + " " + unit.words();
    }
}
