package newel.web.intake;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import newel.client.Contact;
import newel.client.Profile;
import newel.client.Sex;
import newel.client.TextSize;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.DateBoxes;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Span;
import newel.web.form.Typed;

/** Who the client is. */
final class PersonForm {
    static final int LONGEST_NAME = 120;
    private static final int LONGEST_PHONE = 40;
    private static final int OLDEST = 115;
    private static final Span STATURE = Span.of("the height", "cm", 120, 220);
    private static final Span MASS = Span.of("the weight", "kg", 30, 250);

    static List<Ask> asks(Asking ask) {
        return List.of(
                ask.line("person-name", "Name"),
                ask.day("person-birth", "Date of birth").hint("For example 27 3 1948"),
                ask.one("person-sex", "Sex used for norms", sexes())
                        .hint("Published norms differ by sex; nothing else uses it."),
                ask.line("person-stature", "Height").unit("cm").hint("Pictures and reach are worked out from it."),
                ask.line("person-mass", "Weight").unit("kg").maybe(),
                ask.one("person-text", "Text size on papers", sizes()),
                ask.line("person-call-name", "Whom to call when something is wrong: name")
                        .maybe(),
                ask.line("person-call-phone", "Whom to call: phone").keys("tel").maybe());
    }

    private static Map<String, String> sexes() {
        Map<String, String> sexes = new LinkedHashMap<>();
        sexes.put(Choice.of(Sex.FEMALE), "Female");
        sexes.put(Choice.of(Sex.MALE), "Male");
        return sexes;
    }

    private static Map<String, String> sizes() {
        Map<String, String> sizes = new LinkedHashMap<>();
        sizes.put(Choice.of(TextSize.LARGE), "Large, 16 point");
        sizes.put(Choice.of(TextSize.LARGER), "Larger, 18 point");
        sizes.put(Choice.of(TextSize.LARGEST), "Largest, 22 point");
        return sizes;
    }

    static Parsed<Profile> parse(Typed typed, LocalDate today) {
        Reading reading = new Reading(typed);
        String name = reading.text("person-name", "the name", LONGEST_NAME);
        LocalDate birth = reading.date("person-birth", "the date of birth");
        if (birth != null) {
            reading.check(birth.isBefore(today), "person-birth", "Check the date of birth: it lies in the future.");
            reading.check(
                    birth.isAfter(today.minusYears(OLDEST)),
                    "person-birth",
                    "Check the year of birth: nobody is that old.");
        }
        Sex sex = reading.one("person-sex", Sex.class, "Choose the sex used for norms.");
        Integer stature = reading.whole("person-stature", STATURE);
        Double mass = reading.optionalNumber("person-mass", MASS);
        TextSize size = reading.one("person-text", TextSize.class, TextSize.LARGER);
        String callName = reading.optionalText("person-call-name", "the name of whom to call", LONGEST_NAME);
        String callPhone = reading.optionalText("person-call-phone", "the phone number", LONGEST_PHONE);
        reading.check(
                callName == null
                        || callPhone != null
                        || typed.one("person-call-phone").length() > LONGEST_PHONE,
                "person-call-phone",
                "Type the phone number too, or leave the name out.");
        Contact contact = callPhone == null ? null : new Contact(callName == null ? "Call" : callName, callPhone);
        return reading.result(() -> new Profile(name, birth, sex, stature, mass, size, null, contact));
    }

    static Typed fill(Typed typed, Profile profile) {
        Typed filled = DateBoxes.fill(typed, "person-birth", profile.birthDate())
                .with("person-name", profile.name())
                .with("person-sex", Choice.of(profile.sex()))
                .with("person-stature", String.valueOf(profile.statureCm()))
                .with("person-mass", Span.plain(profile.massKg()))
                .with("person-text", Choice.of(profile.textSize()));
        return profile.toCall() == null
                ? filled
                : filled.with("person-call-name", profile.toCall().name())
                        .with("person-call-phone", profile.toCall().phone());
    }

    private PersonForm() {}
}
