package newel.web.referral;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import newel.referral.Note;
import newel.referral.Proposal;
import newel.web.client.ClientHeader;
import newel.web.form.Ask;
import newel.web.form.Faults;

/** @param proposal what Newel would hand over today, null when nothing has to be */
public record NoteListPage(
        ClientHeader header, String base, Proposal proposal, List<Line> lines, List<Ask> asks, Faults faults) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    /** @param due empty when nothing is left to do */
    public record Line(String path, String what, String standing, String due, boolean overdue) {
        public static Line of(String path, Note note, LocalDate today) {
            return new Line(
                    path,
                    "%s, %s".formatted(note.draft().to().words(), DAY.format(note.opened())),
                    note.standing(),
                    note.due().map(day -> due(note, day)).orElse(""),
                    note.overdue(today));
        }

        private static String due(Note note, LocalDate day) {
            return (note.sent().isPresent() ? "Answer due " : "To be sent by ") + DAY.format(day);
        }
    }
}
