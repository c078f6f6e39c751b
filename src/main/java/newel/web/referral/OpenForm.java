package newel.web.referral;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import newel.referral.Addressee;
import newel.referral.Draft;
import newel.referral.Proposal;
import newel.screen.Urgency;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Typed;

/** How soon, and to whom. */
final class OpenForm {
    static List<Ask> asks(Asking ask) {
        Map<String, String> urgencies = new LinkedHashMap<>();
        Arrays.stream(Urgency.values()).forEach(each -> urgencies.put(Choice.of(each), words(each)));
        Map<String, String> addressees = new LinkedHashMap<>();
        Arrays.stream(Addressee.values()).forEach(each -> addressees.put(Choice.of(each), each.words()));
        return List.of(ask.one("note-urgency", "How soon", urgencies), ask.one("note-to", "To whom", addressees));
    }

    static String words(Urgency urgency) {
        return switch (urgency) {
            case EMERGENCY -> "Emergency: call first, this is the record";
            case SAME_DAY -> "Today";
            case ROUTINE -> "Not urgent, within two weeks";
        };
    }

    static Typed fill(Proposal proposal) {
        return Typed.NOTHING
                .with("note-urgency", Choice.of(proposal.urgency()))
                .with("note-to", Choice.of(proposal.to()));
    }

    static Parsed<Draft> parse(Typed typed, Proposal proposal) {
        Reading reading = new Reading(typed);
        Urgency urgency = reading.one("note-urgency", Urgency.class, "Choose how soon.");
        Addressee to = reading.one("note-to", Addressee.class, "Choose who reads it.");
        reading.check(
                urgency == null || to == null || (urgency == Urgency.EMERGENCY) == (to == Addressee.EMERGENCY_RECORD),
                "note-to",
                "A record for the emergency service goes with an emergency, and with nothing else.");
        return reading.result(() -> Draft.of(urgency, to, proposal));
    }

    private OpenForm() {}
}
