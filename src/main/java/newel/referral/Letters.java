package newel.referral;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import newel.client.Profile;
import newel.practice.Instructor;
import newel.practice.Settings;
import newel.screen.Urgency;

/** Writes the letter of a note. */
public final class Letters {
    /** Stands where a reader looks for a number and the practice has set none. */
    static final String NO_CONTACT =
            "We have not written down how to reach us yet. Please give your answer to the client.";

    private final Note note;
    private final Profile person;
    private final Optional<Settings> practice;
    private final LocalDate today;

    private Letters(Note note, Profile person, Optional<Settings> practice, LocalDate today) {
        this.note = note;
        this.person = person;
        this.practice = practice;
        this.today = today;
    }

    /** @param facts everything that could go in; only what the draft ticks does */
    public static Letter write(
            Note note, Profile person, List<Fact> facts, Optional<Settings> practice, LocalDate today) {
        List<Fact> ticked = facts.stream()
                .filter(each -> note.draft().ticked().contains(each.key()))
                .toList();
        return new Letters(note, person, practice, today).letter(ticked);
    }

    private Letter letter(List<Fact> ticked) {
        Draft draft = note.draft();
        return new Letter(
                title(),
                howSoon(),
                Days.of(today),
                draft.readerLine(),
                draft.phoned(),
                from(),
                about(),
                texts(ticked, Fact.Part.NEEDS),
                situation(),
                texts(ticked, Fact.Part.TOLD, Fact.Part.LOGGED),
                texts(ticked, Fact.Part.FOUND, Fact.Part.MEASURED),
                draft.question(),
                draft.meanwhile(),
                reply(),
                note.consent().line(),
                sender(),
                foot());
    }

    private String title() {
        return switch (note.draft().urgency()) {
            case EMERGENCY -> "Record for the emergency service";
            case SAME_DAY -> "Request for advice, today";
            case ROUTINE -> "Request for advice";
        };
    }

    private String howSoon() {
        return switch (note.draft().urgency()) {
            case EMERGENCY -> "Emergency: the number was to be called first; this goes along";
            case SAME_DAY -> "Urgent: today";
            case ROUTINE -> "Not urgent: within two weeks";
        };
    }

    private List<String> from() {
        return practice.map(each -> {
                    List<String> lines = new ArrayList<>(List.of(each.name()));
                    each.address().lines().filter(line -> !line.isBlank()).forEach(lines::add);
                    lines.add(capital(each.reach()));
                    return List.copyOf(lines);
                })
                .orElse(List.of());
    }

    private String about() {
        return "%s, born %s, %d years old".formatted(name(), Days.of(person.birthDate()), person.age(today));
    }

    private String name() {
        return person.name().isEmpty() ? "The client" : person.name();
    }

    private String situation() {
        String who = practice.map(Settings::instructor)
                .map(each -> each.name() + ", " + each.role())
                .orElse("an exercise instructor");
        String reason = note.draft().reason();
        String because = reason.isEmpty() ? "" : " because " + reason;
        return note.draft().urgency() == Urgency.EMERGENCY
                ? "I am %s. I called for help for this person%s.".formatted(who, because)
                : "I am %s. I guide this person's exercise at home and ask for your advice%s.".formatted(who, because);
    }

    private String reply() {
        LocalDate by = Due.of(note.draft().urgency()).toAnswer(today);
        String asked = note.draft().urgency() == Urgency.SAME_DAY
                ? "Please call us today or tomorrow: "
                : "Please answer by " + Days.of(by) + ": ";
        return practice.map(each -> asked + each.reach() + ".").orElse(NO_CONTACT);
    }

    private String sender() {
        return practice.map(Settings::instructor).map(Instructor::line).orElse("An exercise instructor");
    }

    private String foot() {
        String initials = Arrays.stream(name().split("\\s+"))
                .map(each -> each.substring(0, 1))
                .collect(Collectors.joining());
        return "Confidential. %s, reference %s. We screen by published rules and do not diagnose. Page 1 of 1"
                .formatted(initials, note.id().reference());
    }

    private static List<String> texts(List<Fact> facts, Fact.Part... parts) {
        return Arrays.stream(parts)
                .flatMap(part -> facts.stream().filter(each -> each.part() == part))
                .map(Fact::text)
                .toList();
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
