package newel.web.movement;

import java.util.List;
import newel.web.client.ClientHeader;

/**
 * Finding movements.
 *
 * @param header the chosen client, null for nobody
 * @param client id of the chosen client, empty for nobody
 * @param faults what could not be asked for
 */
public record FindPage(
        ClientHeader header,
        String client,
        String text,
        List<Select> selects,
        List<Option> kit,
        boolean home,
        boolean fits,
        List<Option> clients,
        List<String> faults,
        Found found) {
    public record Select(String name, String label, List<Group> groups, boolean taken) {}

    public record Group(String label, List<Option> options) {}

    public record Option(String value, String label, boolean chosen) {}

    /**
     * What was found.
     *
     * @param count in words
     * @param taken the filters that are on
     */
    public record Found(String count, List<Taken> taken, List<Section> sections) {
        public boolean nothing() {
            return sections.isEmpty();
        }
    }

    /**
     * A filter that is on.
     *
     * @param without the page without it
     * @param then how many movements there would be without it, in words
     */
    public record Taken(String label, String without, String then) {}

    public record Section(String title, List<Card> cards) {}

    /**
     * One movement.
     *
     * @param forms how many there are, and how many of them are meant
     * @param verdict how many fit, in words; empty for nobody
     */
    public record Card(
            String id,
            String path,
            String name,
            String why,
            String drawn,
            String forms,
            String positions,
            String verdict,
            List<Bar> bars,
            List<Told> told) {}

    /** One step of the smallest stair: left edge, top and height on a ground of 100 by 40, and the share it is done through. */
    public record Bar(String state, int x, int y, int width, int height, int percent) {}

    /** A form that is drawn back or out, with every reason. */
    public record Told(String name, String words, List<String> reasons) {}
}
