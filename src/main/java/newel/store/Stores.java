package newel.store;

import java.time.Clock;
import org.jdbi.v3.core.Jdbi;

/** Every store over one database. */
public record Stores(
        ClientStore clients,
        DraftStore drafts,
        LimitationStore limitations,
        MeasuredStore measured,
        ProgramStore programs,
        HandoutLinkStore links,
        SearchStore search,
        DayCheckStore checks,
        PainStore pains,
        PracticeStore practice,
        SignOffStore signOffs,
        AuditStore audit,
        ReferralStore referrals) {
    public static Stores of(Database database, Clock clock) {
        Jdbi jdbi = database.jdbi();
        LimitationStore limitations = new LimitationStore(jdbi, clock);
        MeasuredStore measured = new MeasuredStore(jdbi, clock);
        return new Stores(
                new ClientStore(jdbi, clock, limitations, measured),
                new DraftStore(jdbi, clock),
                limitations,
                measured,
                new ProgramStore(jdbi, clock),
                new HandoutLinkStore(jdbi, clock),
                new SearchStore(jdbi),
                new DayCheckStore(jdbi, clock),
                new PainStore(jdbi, clock),
                new PracticeStore(jdbi, clock),
                new SignOffStore(jdbi, clock),
                new AuditStore(jdbi, clock),
                new ReferralStore(jdbi, clock));
    }
}
