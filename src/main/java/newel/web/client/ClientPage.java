package newel.web.client;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import newel.client.Client;
import newel.client.Goal;
import newel.limit.Called;
import newel.limit.Limitation;
import newel.screen.Screening;
import newel.source.Finding;
import newel.web.Practice;
import newel.web.form.Faults;
import newel.web.limitation.MotionWords;
import newel.web.referral.NoteListPage;

/** A client: readiness with its sources, what to mind, and the places that belong to them. */
public record ClientPage(
        String id,
        ClientHeader header,
        List<String> face,
        List<Finding> reasons,
        String falls,
        List<Minded> minded,
        List<String> goals,
        boolean program,
        boolean drafted,
        String standing,
        TodayBand today,
        HowHard howHard,
        LookChoice look,
        List<NoteListPage.Line> notes) {

    public record Minded(String id, String words, String logged, List<String> limits, List<String> cautions) {}

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    static ClientPage of(
            Client client,
            Practice practice,
            TodayBand band,
            boolean program,
            boolean drafted,
            Faults lookFaults,
            List<NoteListPage.Line> notes) {
        Screening screening = practice.screening(client);
        return new ClientPage(
                client.id().value(),
                ClientHeader.of(client, practice),
                screening.face(),
                screening.reasons(),
                screening.falls().level().words(),
                client.limitations().stream().map(ClientPage::minded).toList(),
                client.wishes().goals().stream().map(Goal::words).toList(),
                program,
                drafted,
                Screening.STANDING,
                band,
                HowHard.of(client, screening, practice.today()),
                LookChoice.of(client.look(), lookFaults),
                notes);
    }

    private static Minded minded(Limitation each) {
        String who = switch (each.source()) {
            case CLIENT -> "said by the client";
            case INSTRUCTOR -> "said by you";
            case CLINICIAN -> "ordered by a clinician";
        };
        String review = each.review() == null ? "no review set" : "look again on " + DAY.format(each.review());
        return new Minded(
                each.id(),
                Called.of(each),
                "Since %s, %s, %s.".formatted(DAY.format(each.since()), who, review),
                each.limits().stream().map(MotionWords::of).toList(),
                each.cautions());
    }
}
