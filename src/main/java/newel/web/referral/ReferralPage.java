package newel.web.referral;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import newel.referral.Note;
import newel.web.client.ClientHeader;

/** @param note null when nothing has to be handed over */
public record ReferralPage(ClientHeader header, Note note) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    public String date() {
        return DAY.format(note.date());
    }

    public String born() {
        return DAY.format(note.birthDate());
    }
}
