package newel.web.movement;

import java.util.List;
import newel.catalogue.Words;
import newel.figure.Picture;
import newel.web.client.ClientHeader;
import newel.web.stair.Step;

/**
 * One form of a movement.
 *
 * @param header the chosen client, null for nobody
 * @param range how far to go, in the client's words; empty for the whole way
 * @param facts what it needs and how it is done
 * @param others demands that are neither an angle nor a load
 * @param loadNote how loads are told
 * @param place its place in the client's program, null for nobody
 */
public record VariantPage(
        ClientHeader header,
        String client,
        String query,
        List<FindPage.Option> clients,
        String path,
        String movementPath,
        String movementId,
        String movement,
        String variant,
        String name,
        Step step,
        Picture picture,
        String motion,
        String range,
        Words words,
        List<Line> facts,
        List<MovementPage.Trained> trained,
        List<Angle> angles,
        List<Load> loads,
        String loadNote,
        List<Line> others,
        List<Neighbour> easier,
        List<Neighbour> harder,
        InProgram place) {
    public record Line(String what, String how) {}

    /** Left and right; where the two are directions of the spine, to the left and to the right. */
    public record Angle(String motion, String left, String right) {}

    /** @param beside against sitting or standing quietly @param moment in newton metres for the client, empty when not known */
    public record Load(String joint, String figure, String beside, String moment) {}

    /**
     * The other end of a link.
     *
     * @param by in what way it is easier or harder
     * @param figures of what the link is about, empty when a demand tells it
     * @param falls what is less there
     * @param rises what is more there
     */
    public record Neighbour(
            String path,
            String name,
            String drawn,
            String by,
            String figures,
            Step step,
            List<String> falls,
            List<String> rises) {}
}
