package newel.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import newel.catalogue.Reading;

/**
 * How hard one part of a paper reads. Names of people and movements are left out, as they are in no reader's choice.
 *
 * @param what the movement, or the part of the paper
 * @param hardest the line that reads hardest, where the part is harder than it may be; empty otherwise
 */
public record Graded(String what, double grade, String hardest) {
    public static List<Graded> of(Handout handout) {
        List<Graded> parts = new ArrayList<>();
        parts.add(graded("Page one: stop signs and what to mind", front(handout)));
        handout.parts().stream()
                .flatMap(part -> part.sheets().stream())
                .map(sheet -> graded(sheet.number() + ". " + sheet.name(), lines(sheet)))
                .forEach(parts::add);
        return List.copyOf(parts);
    }

    public static Reading whole(Handout handout) {
        Stream<String> sheets = handout.parts().stream()
                .flatMap(part -> part.sheets().stream())
                .flatMap(sheet -> lines(sheet).stream());
        Stream<String> notes = handout.parts().stream().map(Handout.Part::note);
        return Reading.of(Stream.of(front(handout).stream(), notes, sheets)
                .flatMap(lines -> lines)
                .toList());
    }

    public boolean tooHard() {
        return grade > Reading.MOST;
    }

    static Graded graded(String what, List<String> lines) {
        double grade = Reading.of(lines).grade();
        String hardest = grade > Reading.MOST ? Reading.hardest(lines).orElse("") : "";
        return new Graded(what, grade, hardest);
    }

    private static List<String> front(Handout handout) {
        return Stream.concat(handout.stopSigns().stream(), handout.cautions().stream())
                .toList();
    }

    private static List<String> lines(Sheet sheet) {
        Stream<String> one =
                Stream.of(sheet.why(), sheet.dose(), sheet.range(), sheet.breathing(), sheet.stop(), sheet.careful());
        return Stream.of(sheet.setUp().stream(), sheet.steps().stream(), one)
                .flatMap(lines -> lines)
                .filter(line -> !line.isBlank())
                .toList();
    }
}
