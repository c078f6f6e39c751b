package newel.web.program;

import java.util.List;
import newel.figure.Picture;
import newel.web.client.ClientHeader;
import newel.web.client.TodayBand;
import newel.web.stair.Step;

/**
 * One version of a program.
 *
 * @param face what waits or is withheld, as screening says; empty when nothing is
 * @param fault what stood against the last act, empty when nothing did
 * @param faultAt id of the field that it is about, empty for none
 * @param day the day that is shown, as it stands in an address
 * @param tabs the days to choose from; none where there is one
 * @param brief what composing is asked for
 * @param open the newest version, which may be changed
 */
public record ProgramPage(
        ClientHeader header,
        TodayBand today,
        String base,
        List<String> face,
        String fault,
        String faultAt,
        boolean open,
        int number,
        String made,
        String reason,
        String minutes,
        String day,
        List<Tab> tabs,
        List<Part> parts,
        List<Out> leftOut,
        WeekCard week,
        List<Line> versions,
        List<Changed> changed,
        Link link,
        Told told,
        BriefCard brief) {

    /** A day of the week; one of them is shown. */
    public record Tab(String name, String page, boolean shown) {}

    public record Part(int index, String title, String note, String length, boolean adds, List<Row> rows) {}

    /** One number of a dose as it stands or was typed. */
    public record Box(String id, String name, String label, String value, boolean wrong) {}

    /**
     * @param clock minutes and seconds from the start
     * @param doseFault why the typed dose was refused, empty when it was not
     * @param easier the nearest fitting step down, or null
     * @param harder the nearest fitting step up, or null
     */
    public record Row(
            String movement,
            String clock,
            Picture picture,
            String motion,
            String name,
            String dose,
            String pace,
            List<Box> doseBoxes,
            String doseFault,
            String range,
            List<String> why,
            String override,
            Reasons reasons,
            List<Step> stair) {}

    /**
     * Why an item is here.
     *
     * @param lines what counted, with its points
     * @param next what would come next for its place; a whole sentence, empty when nothing is known
     * @param always the instructor wants it always in
     */
    public record Reasons(List<Counted> lines, String next, boolean always) {}

    public record Counted(String title, String points) {}

    public record Out(String name, List<String> reasons) {}

    /** What composing said of the session: what its proof is worth, and wishes that could not be held. */
    public record Told(String proof, List<Given> givenUp) {}

    /** @param against what it cannot hold together with; a sentence where that was not decided */
    public record Given(String wish, List<String> against) {}

    public record Line(int number, String made, String reason) {}

    public record Changed(String what, String text) {}

    /** @param address the handout's own address, empty when there is none @param allowed whether it may be given out */
    public record Link(String address, boolean allowed) {}

    public String title() {
        return "Program of " + header.name();
    }
}
