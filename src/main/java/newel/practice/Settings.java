package newel.practice;

import newel.assess.Consensus;
import newel.screen.Choices;

/**
 * Who the practice is, as it stands on letters, and what it has chosen.
 *
 * @param address may have several lines; empty when not given
 * @param email empty when not given
 */
public record Settings(
        String name,
        String address,
        String phone,
        String email,
        Country country,
        Instructor instructor,
        Choices choices,
        Consensus consensus) {
    public Settings {
        if (name.isBlank() || phone.isBlank()) {
            throw new IllegalArgumentException("a practice has a name and a phone number");
        }
    }

    /** How a reader reaches the practice, for the middle of a sentence. */
    public String reach() {
        return "phone " + phone + (email.isEmpty() ? "" : " or email " + email);
    }
}
