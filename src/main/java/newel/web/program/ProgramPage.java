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
        List<Week> week,
        List<String> days,
        List<Line> versions,
        List<Changed> changed,
        Link link,
        int breaks) {

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
            List<Box> doseBoxes,
            String doseFault,
            String range,
            List<String> why,
            String override,
            List<Step> stair) {}

    public record Out(String name, List<String> reasons) {}

    /** A muscle group or balance, and on which of the days it is worked. */
    public record Week(String group, List<Boolean> on, boolean enough) {}

    public record Line(int number, String made, String reason) {}

    public record Changed(String what, String text) {}

    /** @param address the handout's own address, empty when there is none @param allowed whether it may be given out */
    public record Link(String address, boolean allowed) {}

    public String title() {
        return "Program of " + header.name();
    }
}
