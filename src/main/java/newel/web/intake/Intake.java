package newel.web.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import newel.client.Client;
import newel.client.ClientId;
import newel.client.Home;
import newel.client.Profile;
import newel.client.Wishes;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Typed;

/** The questions and answers of an intake as one whole. */
record Intake(Typed typed, Entries entries, LocalDate today) {

    List<Ask> asks(Step step, Faults faults) {
        Asking asking = new Asking(typed, faults);
        return switch (step) {
            case PERSON -> PersonForm.asks(asking);
            case HOME -> HomeForm.asks(asking);
            case WISHES -> WishesForm.asks(asking);
            case READINESS -> ReadinessForm.asks(asking);
            case LIMITATIONS -> entries.form().asks(asking);
            case CHECK -> List.of();
        };
    }

    Faults faults(Step step) {
        return switch (step) {
            case PERSON -> PersonForm.parse(typed, today).faults();
            case HOME -> HomeForm.parse(typed).faults();
            case WISHES -> WishesForm.parse(typed).faults();
            case READINESS -> ReadinessForm.parse(typed, today).faults();
            case LIMITATIONS, CHECK -> new Faults();
        };
    }

    int open(Step step) {
        return step == Step.LIMITATIONS || step == Step.CHECK ? 0 : Summary.open(asks(step, new Faults()));
    }

    /** Everything that keeps the intake from being finished, over all steps. */
    List<CheckPage.Open> open(String base) {
        List<CheckPage.Open> open = new ArrayList<>();
        for (Step step : Step.values()) {
            for (Faults.Fault fault : faults(step).all()) {
                open.add(new CheckPage.Open(
                        base + "/" + step.slug() + "#" + fault.field(), step.title() + ": " + fault.message()));
            }
        }
        String limitations = base + "/" + Step.LIMITATIONS.slug();
        if (Entries.begun(typed)) {
            open.add(new CheckPage.Open(
                    limitations, "A limitation was begun and is not taken down. Take it down, or empty its fields."));
        }
        if (entries.unreadable(typed)) {
            open.add(new CheckPage.Open(
                    limitations, "A limitation that was taken down cannot be read. Remove it and take it down again."));
        }
        return List.copyOf(open);
    }

    List<CheckPage.Part> parts() {
        List<CheckPage.Part> parts = new ArrayList<>();
        for (Step step : List.of(Step.PERSON, Step.HOME, Step.WISHES, Step.READINESS)) {
            parts.add(new CheckPage.Part(step, Summary.of(asks(step, new Faults()))));
        }
        List<CheckPage.Answered> minded = entries.told(typed).stream()
                .map(each -> new CheckPage.Answered("Limitation", each.words()))
                .toList();
        parts.add(new CheckPage.Part(
                Step.LIMITATIONS,
                minded.isEmpty() ? List.of(new CheckPage.Answered("Limitation", "None taken down")) : minded));
        return parts;
    }

    /** The client as answered; measures, limitations and who is drawn are kept as they were. */
    Client client(ClientId id, Client before) {
        Parsed<Profile> profile = PersonForm.parse(typed, today);
        Parsed<Home> home = HomeForm.parse(typed);
        Parsed<Wishes> wishes = WishesForm.parse(typed);
        ReadinessForm.Answered answered = answered().orElseThrow();
        return new Client(
                id,
                profile.value().orElseThrow(),
                home.value().orElseThrow(),
                wishes.value().orElseThrow(),
                answered.readiness(),
                before == null
                        ? answered.falls()
                        : answered.falls().withItems(before.falls().items()),
                answered.vitals(),
                before == null ? List.of() : before.measures(),
                before == null ? List.of() : before.limitations(),
                before == null ? "" : before.look());
    }

    Optional<ReadinessForm.Answered> answered() {
        return ReadinessForm.parse(typed, today).value();
    }

    static Typed filled(Client client) {
        Typed typed = PersonForm.fill(Typed.NOTHING, client.profile());
        typed = HomeForm.fill(typed, client.home());
        typed = WishesForm.fill(typed, client.wishes());
        return ReadinessForm.fill(typed, client.readiness(), client.falls(), client.vitals());
    }
}
