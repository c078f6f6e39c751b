package newel.web.program;

import java.util.List;
import newel.figure.Picture;
import newel.web.client.ClientHeader;

/** What a newly logged limitation changes in a program: was, now, and why. */
public record ChangesPage(
        ClientHeader header, String base, int number, String reason, List<Change> changes, List<Kept> kept) {

    /** @param after null when it has to go */
    public record Change(Side before, List<String> reasons, String how, Side after) {}

    public record Side(String name, String dose, String range, Picture picture) {}

    public record Kept(String name) {}

    public boolean nothing() {
        return changes.isEmpty();
    }
}
