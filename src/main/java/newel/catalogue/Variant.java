package newel.catalogue;

import java.util.List;
import java.util.Set;
import newel.body.KeyPose;

/**
 * One way to do a movement.
 *
 * @param movement id of the movement it belongs to
 * @param name what the client reads, such as "Towel row, sitting back"
 * @param holdSeconds longest isometric hold asked for, 0 for none
 * @param round after the last key pose comes the first again, not the way back
 * @param effort effort on a 0 to 10 scale when the beginner's dose is done as written
 * @param furniture what is drawn: the kit plus a seat or bed
 */
public record Variant(
        String id,
        String movement,
        String name,
        Purposes purposes,
        Position position,
        Support support,
        Set<Kit> kit,
        View view,
        List<KeyPose> keyPoses,
        boolean round,
        Sides sides,
        Tempo tempo,
        Trim trim,
        DoseRange dose,
        int coordination,
        int holdSeconds,
        Grip grip,
        int effort,
        Set<Trait> traits,
        Words words,
        Breath breath,
        List<Link> easier) {}
