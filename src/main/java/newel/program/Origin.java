package newel.program;

import java.time.DayOfWeek;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import newel.compose.Account;
import newel.compose.Week;

/**
 * Where a version comes from.
 *
 * @param brief what composing was asked for, and is asked again next time
 * @param accounts what composing said about each day
 */
public record Origin(Brief brief, SortedMap<DayOfWeek, Account> accounts) {
    /** Of a version that was composed before this was kept. */
    public static final Origin UNKNOWN = new Origin(Brief.UNKNOWN, new TreeMap<>());

    public Origin {
        accounts = Collections.unmodifiableSortedMap(new TreeMap<>(accounts));
    }

    static Origin of(Brief brief, Week week) {
        SortedMap<DayOfWeek, Account> accounts = new TreeMap<>();
        week.made().forEach((day, made) -> accounts.put(day, Account.of(made)));
        return new Origin(brief, accounts);
    }

    public Optional<Account> account(DayOfWeek day) {
        return Optional.ofNullable(accounts.get(day));
    }

    /** After a change that composing did not make. */
    Origin afterChange() {
        SortedMap<DayOfWeek, Account> after = new TreeMap<>(accounts);
        after.replaceAll((day, account) -> account.afterChange());
        return new Origin(brief, after);
    }

    /** After a change by hand: what she took out stays out, what she put back may stay. */
    Origin afterHand(Set<String> before, Set<String> after) {
        Brief changed = brief;
        for (String movement : before) {
            changed = after.contains(movement) ? changed : changed.banning(movement);
        }
        for (String movement : after) {
            boolean wasOut = changed.banned().contains(movement);
            changed = wasOut ? changed.free(movement) : changed;
        }
        return new Origin(changed, afterChange().accounts);
    }
}
