package newel.web.limitation;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import newel.body.Motion;
import newel.limit.Called;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.limit.Preset;
import newel.limit.Presets;
import newel.limit.Sided;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Span;
import newel.web.form.Typed;

/** One limitation as typed. The fields begin with a prefix, so that it may stand inside other forms. */
public final class LimitationForm {
    private static final String OWN = "own";
    private static final int LONGEST_WORDS = 400;
    private static final Span DEGREES = Span.of("the largest angle", "degrees", 0, 180);

    /** Motions that are limited in practice, in the order of the body. */
    private static final List<Motion> MOTIONS = List.of(
            Motion.SHOULDER_RAISE,
            Motion.SHOULDER_ABDUCTION,
            Motion.SHOULDER_EXTENSION,
            Motion.SHOULDER_OUT,
            Motion.ELBOW_BEND,
            Motion.WRIST_BACK,
            Motion.NECK_TURN,
            Motion.NECK_EXTENSION,
            Motion.UPPER_BACK_TURN,
            Motion.LOW_BACK_FLEXION,
            Motion.LOW_BACK_EXTENSION,
            Motion.HIP_FLEXION,
            Motion.HIP_EXTENSION,
            Motion.HIP_ABDUCTION,
            Motion.KNEE_BEND,
            Motion.KNEE_BEND_LOADED,
            Motion.ANKLE_UP);

    private final Presets presets;
    private final String prefix;

    public LimitationForm(Presets presets, String prefix) {
        this.presets = presets;
        this.prefix = prefix;
    }

    public List<Ask> asks(Asking ask) {
        return List.of(
                ask.one(prefix + "what", "What is it", what()),
                ask.one(prefix + "side", "Which side", sides()).shaped(Ask.Shape.BESIDE),
                new Ask.Group(
                        "A limit of your own",
                        "Only when you chose it above: one motion, and how far it may go.",
                        List.of(
                                ask.one(prefix + "motion", "Motion", motions()).maybe(),
                                ask.line(prefix + "degrees", "Largest angle")
                                        .unit("degrees")
                                        .maybe())),
                new Ask.Group(
                        "How it was logged",
                        "",
                        List.of(
                                ask.words(prefix + "words", "In whose words")
                                        .hint("What was said, as it was said.")
                                        .maybe(),
                                ask.one(prefix + "source", "Who says so", sources()),
                                ask.day(prefix + "since", "Since").hint("For example 3 3 2026"),
                                ask.day(prefix + "review", "Look at it again on")
                                        .maybe())));
    }

    private Map<String, String> what() {
        Map<String, String> what = new LinkedHashMap<>();
        presets.all().forEach(preset -> what.put(preset.id(), preset.name()));
        what.put(OWN, "A limit of your own, by motion and degrees");
        return what;
    }

    private static Map<String, String> sides() {
        Map<String, String> sides = new LinkedHashMap<>();
        sides.put("left", "Left");
        sides.put("right", "Right");
        sides.put("both", "Both, or not about a side");
        return sides;
    }

    private static Map<String, String> sources() {
        Map<String, String> sources = new LinkedHashMap<>();
        sources.put("client", "The client");
        sources.put("instructor", "You, the instructor");
        sources.put("clinician", "A clinician's order");
        return sources;
    }

    private static Map<String, String> motions() {
        Map<String, String> motions = new LinkedHashMap<>();
        MOTIONS.forEach(motion -> motions.put(Choice.of(motion), MotionWords.of(motion)));
        return motions;
    }

    /** @param id the key that the limitation gets */
    public Parsed<Limitation> parse(Typed typed, String id, LocalDate today) {
        Reading reading = new Reading(typed);
        String chosen = typed.one(prefix + "what");
        boolean own = chosen.equals(OWN);
        Preset preset = presets.find(chosen).orElse(null);
        reading.need(own || preset != null, prefix + "what", "Choose what it is.");
        Sided side = reading.one(prefix + "side", Sided.class, "Choose the side, or both.");
        reading.check(
                preset == null || !preset.sided() || side != Sided.BOTH || !oneSideOnly(chosen),
                prefix + "side",
                "Choose left or right: this is about one side.");
        String words = reading.optionalText(prefix + "words", "the words", LONGEST_WORDS);
        Limitation.Source source = reading.one(prefix + "source", Limitation.Source.class, "Say who says so.");
        LocalDate since = reading.date(prefix + "since", "the day since when");
        if (since != null) {
            reading.check(!since.isAfter(today), prefix + "since", "Check the day since when: it lies in the future.");
        }
        LocalDate review = reading.optionalDate(prefix + "review", "the day of the review");
        if (review != null) {
            reading.check(
                    review.isAfter(today), prefix + "review", "Check the day of the review: it has passed already.");
        }
        return own
                ? own(reading, id, side, words, source, since, review)
                : reading.result(
                        () -> preset.limitation(id, plain(words), side, source, since, day(preset, review, today)));
    }

    /** As typed, unless the same holds already. */
    public Parsed<Limitation> parseNew(Typed typed, String id, LocalDate today, List<Limitation> holding) {
        Parsed<Limitation> parsed = parse(typed, id, today);
        Optional<Limitation> same = parsed.value()
                .flatMap(limitation ->
                        holding.stream().filter(limitation::saysTheSame).findFirst());
        if (same.isEmpty()) {
            return parsed;
        }
        Faults faults = new Faults();
        faults.wrong(
                prefix + "what",
                "This is logged already: %s. Change or end that one, or choose another side."
                        .formatted(Called.of(same.get())));
        return new Parsed<>(Optional.empty(), faults);
    }

    /** A weak side and a pacemaker's side are one side by their nature. */
    private static boolean oneSideOnly(String preset) {
        return preset.equals("stroke-weak-side") || preset.equals("new-pacemaker");
    }

    private Parsed<Limitation> own(
            Reading reading,
            String id,
            Sided side,
            String words,
            Limitation.Source source,
            LocalDate since,
            LocalDate review) {
        Motion motion = reading.one(prefix + "motion", Motion.class, "Choose the motion of your own limit.");
        Double degrees = reading.number(prefix + "degrees", DEGREES);
        return reading.result(() -> new Limitation(
                id,
                "",
                plain(words).isEmpty()
                        ? "%s to %s° at most".formatted(MotionWords.of(motion), Span.plain(degrees))
                        : words,
                side,
                source,
                since,
                review,
                List.of(new Limit.Angle(motion, side, degrees)),
                List.of()));
    }

    /** A preset that is looked at again after some weeks brings its own day. */
    private static LocalDate day(Preset preset, LocalDate review, LocalDate today) {
        return review != null || preset.weeks() == 0 ? review : today.plusWeeks(preset.weeks());
    }

    private static String plain(String words) {
        return words == null ? "" : words;
    }

    static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
