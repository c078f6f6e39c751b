package newel.store;

import com.fasterxml.uuid.Generators;
import com.fasterxml.uuid.NoArgGenerator;

/** Keys for new rows: UUIDs of version 7, which sort by the time they were made. */
public final class Ids {
    private static final NoArgGenerator UUID_7 = Generators.timeBasedEpochGenerator();

    public static String next() {
        return UUID_7.generate().toString();
    }

    private Ids() {}
}
