package newel.store;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import newel.practice.SignOff;
import newel.practice.SignOffs;
import org.jdbi.v3.core.Jdbi;

/** What clinicians signed off for the practice. */
public final class SignOffStore {
    private final Jdbi jdbi;
    private final Clock clock;

    SignOffStore(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /** Those that were not taken back. */
    public SignOffs all() {
        return new SignOffs(jdbi.withHandle(handle -> handle.createQuery("""
                        select * from sign_off where taken_back_at is null order by signed_at, id""")
                .map((row, context) -> new SignOff(
                        row.getString("rule"),
                        row.getString("signed"),
                        row.getString("who"),
                        row.getString("role"),
                        LocalDate.parse(row.getString("signed_on"))))
                .list()));
    }

    public void add(List<SignOff> signOffs) {
        jdbi.useTransaction(handle -> signOffs.forEach(each -> handle.createUpdate("""
                        insert into sign_off (id, rule, signed, who, role, signed_on, signed_at)
                        values (:id, :rule, :signed, :who, :role, :on, :now)""")
                .bind("id", Ids.next())
                .bind("rule", each.rule())
                .bind("signed", each.signed())
                .bind("who", each.who())
                .bind("role", each.role())
                .bind("on", each.on().toString())
                .bind("now", clock.instant().toString())
                .execute()));
    }

    /** These rules need a sign-off again; who had signed stays on record. */
    public void takeBack(List<String> rules) {
        jdbi.useTransaction(handle -> rules.forEach(rule -> handle.createUpdate("""
                        update sign_off set taken_back_at = :now where rule = :rule and taken_back_at is null""")
                .bind("rule", rule)
                .bind("now", clock.instant().toString())
                .execute()));
    }
}
