package newel.coverage;

import java.util.Locale;
import newel.catalogue.Kind;
import newel.catalogue.Movement;
import newel.catalogue.Purpose;
import newel.catalogue.Variant;

/** What a variant can serve: a column of the table. */
public enum Served {
    LEGS,
    HIPS,
    BACK,
    ABDOMEN,
    CHEST,
    SHOULDERS,
    ARMS,
    BALANCE,
    PULSE,
    MOBILITY;

    /** Less than this is a by-product (design choice). */
    private static final int MAIN = 2;

    public boolean by(Movement movement, Variant variant) {
        return this == MOBILITY
                ? movement.kind() == Kind.MOBILITY || movement.kind() == Kind.STRETCH
                : variant.purposes().weight(Purpose.valueOf(name())) >= MAIN;
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
