package newel.referral;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A question handed over, from its draft to its answer.
 *
 * @param opened the day on which it was begun
 */
public record Note(NoteId id, LocalDate opened, Draft draft, Consent consent, Stage stage) {

    /** Something is still to be done about it. */
    public boolean open() {
        return due().isPresent();
    }

    /** The last day for the next step; nothing when no step is left. */
    public Optional<LocalDate> due() {
        Due due = Due.of(draft.urgency());
        return switch (stage) {
            case Stage.Drafted drafted ->
                consent instanceof Consent.Refused ? Optional.empty() : Optional.of(due.toSend(opened));
            case Stage.Sent sent -> Optional.of(due.toAnswer(sent.on()));
            case Stage.Answered answered -> Optional.empty();
            case Stage.Dropped dropped -> Optional.empty();
        };
    }

    public boolean overdue(LocalDate today) {
        return due().filter(today::isAfter).isPresent();
    }

    /** The letter as it went out; empty before. */
    public Optional<Stage.Sent> sent() {
        return switch (stage) {
            case Stage.Sent sent -> Optional.of(sent);
            case Stage.Answered answered -> Optional.of(answered.sent());
            case Stage.Drafted drafted -> Optional.empty();
            case Stage.Dropped dropped -> Optional.empty();
        };
    }

    /** Where it stands, in a few words. */
    public String standing() {
        return switch (stage) {
            case Stage.Drafted drafted ->
                consent instanceof Consent.Refused ? "The client refused; not sent" : "Drafted, not sent";
            case Stage.Sent sent -> "Sent " + Days.of(sent.on()) + ", not answered";
            case Stage.Answered answered ->
                "Answered " + Days.of(answered.reply().on());
            case Stage.Dropped dropped -> "Dropped, never sent";
        };
    }
}
