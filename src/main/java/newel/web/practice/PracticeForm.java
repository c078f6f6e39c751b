package newel.web.practice;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import newel.assess.Consensus;
import newel.practice.Country;
import newel.practice.Instructor;
import newel.practice.Settings;
import newel.screen.Choices;
import newel.screen.FallsSet;
import newel.screen.PainZones;
import newel.screen.RestSet;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Typed;

/** The settings of a practice as typed. */
final class PracticeForm {
    private static final int LONGEST_LINE = 80;
    private static final int LONGEST_ADDRESS = 300;
    private static final int LEAST_DIGITS = 5;

    static List<Ask> asks(Asking ask) {
        return List.of(
                new Ask.Group("Who you are", "This stands on letters.", who(ask)),
                new Ask.Group("Where you are", "It says which number is shown first in an emergency.", where(ask)),
                new Ask.Group("Who signs", "", signs(ask)),
                new Ask.Group(
                        "Rules you work by",
                        "Published sources disagree here. Until you choose, the strictest list for rest, falls and pain holds.",
                        rules(ask)));
    }

    private static List<Ask> who(Asking ask) {
        return List.of(
                ask.line("practice-name", "Name of the practice"),
                ask.words("practice-address", "Address").maybe(),
                ask.line("practice-phone", "Phone").keys("tel").hint("A clinician answers to this number."),
                ask.line("practice-email", "Email").keys("email").maybe());
    }

    private static List<Ask> where(Asking ask) {
        Map<String, String> countries = new LinkedHashMap<>();
        Country.ALL.forEach(each -> countries.put(each.code(), each.name() + ", " + each.emergencyNumber()));
        countries.put(Country.OTHER, "Another country");
        return List.of(
                ask.one("practice-country", "Country, and its number for an ambulance", countries)
                        .hint("The numbers are written down from memory: check yours.")
                        .shaped(Ask.Shape.BESIDE),
                ask.line("practice-country-name", "Name of the other country").maybe(),
                ask.line("practice-emergency", "Number for an ambulance there")
                        .keys("tel")
                        .maybe());
    }

    private static List<Ask> signs(Asking ask) {
        return List.of(
                ask.line("practice-instructor", "Name of the instructor"),
                ask.line("practice-role", "Role").hint("For example: exercise instructor"),
                ask.line("practice-qualification", "Qualification").maybe(),
                ask.line("practice-registration", "Registration number").maybe());
    }

    private static List<Ask> rules(Asking ask) {
        return List.of(
                ask.one("practice-rest", "Pressure and pulse at rest", labels(RestSet.values(), RestSet::words)),
                ask.one("practice-falls", "Risk of falls", labels(FallsSet.values(), FallsSet::words)),
                ask.one("practice-pain", "Pain from 0 to 10 in exercise", labels(PainZones.values(), PainZones::words))
                        .hint("Over 5 is too much in both."),
                ask.one("practice-consensus", "Muscle loss: whose lines", labels(Consensus.values(), Consensus::words))
                        .hint(
                                "For grip, five chair stands and the short battery. Where a program begins stays with the European lines."));
    }

    private static <E extends Enum<E>> Map<String, String> labels(E[] constants, Function<E, String> words) {
        Map<String, String> labels = new LinkedHashMap<>();
        Arrays.stream(constants).forEach(each -> labels.put(Choice.of(each), words.apply(each)));
        return labels;
    }

    static Typed nothingYet() {
        return chosen(Typed.NOTHING, Choices.strict(), Consensus.EUROPE);
    }

    static Typed fill(Settings settings) {
        Typed typed = chosen(Typed.NOTHING, settings.choices(), settings.consensus())
                .with("practice-name", settings.name())
                .with("practice-address", settings.address())
                .with("practice-phone", settings.phone())
                .with("practice-email", settings.email())
                .with("practice-country", settings.country().code())
                .with("practice-instructor", settings.instructor().name())
                .with("practice-role", settings.instructor().role())
                .with("practice-qualification", settings.instructor().qualification())
                .with("practice-registration", settings.instructor().registration());
        return settings.country().listed()
                ? typed
                : typed.with("practice-country-name", settings.country().name())
                        .with("practice-emergency", settings.country().emergencyNumber());
    }

    private static Typed chosen(Typed typed, Choices choices, Consensus consensus) {
        return typed.with("practice-rest", Choice.of(choices.restSet()))
                .with("practice-falls", Choice.of(choices.fallsSet()))
                .with("practice-pain", Choice.of(choices.painZones()))
                .with("practice-consensus", Choice.of(consensus));
    }

    static Parsed<Settings> parse(Typed typed) {
        Reading reading = new Reading(typed);
        String name = reading.text("practice-name", "the name of the practice", LONGEST_LINE);
        String address = plain(reading.optionalText("practice-address", "the address", LONGEST_ADDRESS));
        String phone = phone(reading);
        String email = email(reading);
        Country country = country(typed, reading);
        Instructor instructor = instructor(reading);
        Choices choices = choices(reading);
        Consensus consensus = reading.one("practice-consensus", Consensus.class, "Choose whose lines on muscle loss.");
        return reading.result(() -> new Settings(name, address, phone, email, country, instructor, choices, consensus));
    }

    private static String phone(Reading reading) {
        String phone = reading.text("practice-phone", "the phone number", LONGEST_LINE);
        boolean dials = phone == null
                || phone.matches("[+(\\d][\\d ()/.-]*")
                        && phone.replaceAll("\\D", "").length() >= LEAST_DIGITS;
        reading.check(dials, "practice-phone", "Check the phone number: digits, spaces, and + in front of a country.");
        return phone;
    }

    private static String email(Reading reading) {
        String email = plain(reading.optionalText("practice-email", "the email", LONGEST_LINE));
        boolean usable = email.isEmpty() || email.matches("[^\\s@]+@[^\\s@]+\\.[^\\s@]+");
        reading.check(usable, "practice-email", "Check the email: it has the form name@place.org.");
        return email;
    }

    private static Country country(Typed typed, Reading reading) {
        String code = typed.one("practice-country");
        if (!code.equals(Country.OTHER)) {
            Country listed = Country.of(code).orElse(null);
            reading.need(listed != null, "practice-country", "Choose the country, or another country.");
            return listed;
        }
        String name = reading.text("practice-country-name", "the name of the country", LONGEST_LINE);
        String number = reading.text("practice-emergency", "the number for an ambulance there", LONGEST_LINE);
        reading.check(
                number == null || number.replace(" ", "").matches("\\d{2,10}"),
                "practice-emergency",
                "Check the number for an ambulance: it has 2 to 10 digits.");
        return Country.other(name, number);
    }

    private static Instructor instructor(Reading reading) {
        return new Instructor(
                reading.text("practice-instructor", "the name of the instructor", LONGEST_LINE),
                reading.text("practice-role", "the role", LONGEST_LINE),
                plain(reading.optionalText("practice-qualification", "the qualification", LONGEST_LINE)),
                plain(reading.optionalText("practice-registration", "the registration number", LONGEST_LINE)));
    }

    private static Choices choices(Reading reading) {
        return new Choices(
                reading.one("practice-rest", RestSet.class, "Choose the lines on pressure and pulse."),
                reading.one("practice-falls", FallsSet.class, "Choose the path on falls."),
                reading.one("practice-pain", PainZones.class, "Choose the pain zones."));
    }

    private static String plain(String text) {
        return text == null ? "" : text;
    }

    private PracticeForm() {}
}
