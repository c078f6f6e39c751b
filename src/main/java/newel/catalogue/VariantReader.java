package newel.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import newel.body.KeyPose;
import newel.body.Part;

/** Reads one variant. */
final class VariantReader {
    private static final String BACK = "back";

    static Variant read(Spot spot, JsonNode node, String movement, Purposes base) {
        Entry entry = new Entry(spot, "", node);
        Variant variant = new Variant(
                entry.text("id"),
                movement,
                entry.text("name"),
                MovementReader.purposes(entry, base),
                entry.one("position", Position.class, null),
                entry.one("support", Support.class, null),
                Set.copyOf(entry.some("kit", Kit.class)),
                view(entry.child("view")),
                poses(entry),
                entry.flag("round"),
                entry.one("sides", Sides.class, null),
                tempo(entry.child("tempo")),
                trim(entry.child("trim")),
                new DoseRange(
                        dose(entry.child("dose").child("beginner")),
                        dose(entry.child("dose").child("later"))),
                entry.whole("coordination", 1),
                entry.whole("holdSeconds", 0),
                entry.one("grip", Grip.class, Grip.NONE),
                entry.whole("effort", 0),
                Set.copyOf(entry.some("traits", Trait.class)),
                words(entry.child("words")),
                breath(entry),
                entry.children("easier").stream().map(VariantReader::link).toList());
        entry.finish();
        return variant;
    }

    private static List<KeyPose> poses(Entry entry) {
        return entry.children("poses").stream().map(PoseReader::read).toList();
    }

    private static View view(Entry entry) {
        View view = new View(entry.number("yaw", 0), entry.number("pitch", 0));
        entry.finish();
        return view;
    }

    private static Tempo tempo(Entry entry) {
        Tempo tempo = new Tempo(entry.number("out", 0), entry.number("hold", 0), entry.number("back", 0));
        entry.finish();
        return tempo;
    }

    private static Trim trim(Entry entry) {
        Trim trim = new Trim(entry.one("part", Part.class, Part.NONE), entry.number("least", 1));
        entry.finish();
        return trim;
    }

    private static Dose dose(Entry entry) {
        Dose dose = new Dose(entry.whole("sets", 0), entry.whole("repetitions", 0), entry.whole("seconds", 0));
        entry.finish();
        return dose;
    }

    private static Words words(Entry entry) {
        Words words = new Words(
                entry.texts("setUp"),
                entry.texts("steps"),
                entry.text("breathing"),
                entry.text("feel"),
                entry.text("stop"));
        entry.finish();
        return words;
    }

    /** Legs by their number, and `back`. */
    private static Breath breath(Entry entry) {
        List<String> out = entry.texts("breatheOut");
        Set<Integer> legs = out.stream()
                .filter(each -> each.matches("[1-9]"))
                .map(Integer::valueOf)
                .collect(Collectors.toUnmodifiableSet());
        if (legs.size() + (out.contains(BACK) ? 1 : 0) != out.size()) {
            entry.flaw("breatheOut holds numbers of legs, each once, and '" + BACK + "': " + out);
        }
        return new Breath(legs, out.contains(BACK));
    }

    private static Link link(Entry entry) {
        Link link = new Link(entry.one("axis", Axis.class, null), entry.text("to"), entry.texts("rises"));
        entry.finish();
        return link;
    }

    private VariantReader() {}
}
