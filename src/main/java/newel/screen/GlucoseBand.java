package newel.screen;

import static newel.source.Known.*;

import java.math.BigDecimal;
import java.util.Arrays;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/** Bands of blood sugar for people on insulin or on tablets that can make it too low; each runs to just under the next. */
public enum GlucoseBand {
    VERY_LOW("0", "0", "ADA Standards of Care", FROM_MEMORY, "treat it, no exercise today"),
    /** From 52 to under 54 mg/dL the line above is the stricter one, and holds. */
    LOW(
            "54",
            "3.0",
            "Turner et al. 2019, Sports Med Open 5:20",
            SEEN,
            "treat it with 15 g of fast sugar, measure again after 15 minutes; not when alone"),
    SUGAR_FIRST(
            "70",
            "3.9",
            "Colberg et al. 2016, Diabetes Care 39:2065-2079",
            SEEN,
            "15 to 30 g of fast carbohydrate before the start"),
    SUGAR_FROM_THE_START(
            "90",
            "5.0",
            "Colberg et al. 2016, Diabetes Care 39:2065-2079",
            SEEN,
            "start, with carbohydrate from the beginning (0.5 to 1 g for each kg in an hour)"),
    GOOD("150", "8.3", "Colberg et al. 2016, Diabetes Care 39:2065-2079", SEEN, "start"),
    HIGH(
            "250",
            "13.9",
            "Colberg et al. 2016, Diabetes Care 39:2065-2079; that unknown ketones are tested first is ours",
            SEEN,
            "test for ketones: none with them; without them light to moderate only"),
    VERY_HIGH(
            "350",
            "19.4",
            "Colberg et al. 2016, Diabetes Care 39:2065-2079; that unknown ketones are tested first is ours",
            SEEN,
            "test for ketones: none with them; without them the person's own plan first, then light to moderate only");

    private final BigDecimal fromMgDl;
    private final BigDecimal fromMmolL;
    private final Rule rule;
    private final String says;

    GlucoseBand(String fromMgDl, String fromMmolL, String citation, Known known, String says) {
        this.fromMgDl = new BigDecimal(fromMgDl);
        this.fromMmolL = new BigDecimal(fromMmolL);
        this.rule = new Rule("SUGAR-" + name().replace('_', '-'), citation, known);
        this.says = says;
    }

    static GlucoseBand of(Glucose glucose) {
        return Arrays.stream(values())
                .filter(band -> glucose.value().compareTo(band.from(glucose.unit())) >= 0)
                .reduce(VERY_LOW, (one, next) -> next);
    }

    private BigDecimal from(Glucose.Unit unit) {
        return switch (unit) {
            case MG_DL -> fromMgDl;
            case MMOL_L -> fromMmolL;
        };
    }

    public Rule rule() {
        return rule;
    }

    public String says() {
        return says;
    }

    Statement stated() {
        String from = this == VERY_LOW
                ? "Under 54 mg/dL (3.0 mmol/L)"
                : "From %s mg/dL (%s mmol/L)".formatted(fromMgDl, fromMmolL);
        return Area.state(rule, Area.SUGAR, from + ": " + says + ".");
    }
}
