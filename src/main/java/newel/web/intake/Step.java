package newel.web.intake;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The steps of an intake, in order. */
public enum Step {
    PERSON("The person"),
    HOME("The home"),
    WISHES("Goals and days"),
    READINESS("Ready to start?"),
    LIMITATIONS("What to mind"),
    CHECK("Check and finish");

    private final String title;

    Step(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }

    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** All fields of a step begin so. */
    String prefix() {
        return slug() + "-";
    }

    Step next() {
        return values()[Math.min(ordinal() + 1, values().length - 1)];
    }

    Step before() {
        return values()[Math.max(ordinal() - 1, 0)];
    }

    static Optional<Step> of(String slug) {
        return Arrays.stream(values()).filter(step -> step.slug().equals(slug)).findFirst();
    }
}
