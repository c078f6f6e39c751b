package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import newel.body.Contacts;
import newel.body.Hand;
import newel.body.KeyPose;
import newel.body.Mirror;
import newel.body.Path;

/** Draws the way of a scene as a film, with the same room and figure as its picture. */
public final class Filming {
    private final Scene scene;
    private final Camera camera;
    private final int perLeg;

    /** @param perLeg frames from one key pose to the next */
    public Filming(Scene scene, int perLeg) {
        this.scene = scene;
        this.camera = ViewPoint.of(scene);
        this.perLeg = perLeg;
    }

    public Film film() {
        List<KeyPose> keys = round(scene.keyPoses());
        List<List<List<Mark>>> passes = new ArrayList<>(List.of(pass(keys)));
        if (takesTurns()) {
            passes.add(pass(keys.stream().map(Mirror::of).toList()));
        }
        Framing framing = Framing.of(passes.stream().flatMap(List::stream).toList(), Optional.empty());
        List<List<List<Mark>>> floored = passes.stream()
                .map(pass -> pass.stream().map(marks -> onFloor(framing, marks)).toList())
                .toList();
        return new Film(framing.window(), scene.look().style(), keys.size() - 1, floored);
    }

    private List<Mark> onFloor(Framing framing, List<Mark> marks) {
        return closeUp() ? marks : framing.floored(marks);
    }

    private boolean closeUp() {
        return CloseUp.tells(new Path(scene.keyPoses()).keys());
    }

    private List<List<Mark>> pass(List<KeyPose> keys) {
        Path path = new Path(keys);
        if (closeUp()) {
            return path.samples(perLeg).stream().map(CloseUp::marks).toList();
        }
        Staging staging = new Staging(scene, camera, path.keys(), Towel.length(path.keys()));
        return path.samples(perLeg).stream().map(staging::marks).toList();
    }

    /** What circles goes on to where it began. */
    private List<KeyPose> round(List<KeyPose> keys) {
        return scene.circles() && keys.size() > 2
                ? Stream.concat(keys.stream(), Stream.of(keys.getFirst())).toList()
                : keys;
    }

    /** A hand on one side's support stays there: the picture shows that side alone. */
    private boolean takesTurns() {
        return scene.working() == Scene.Working.ALTERNATING
                && scene.keyPoses().stream().map(KeyPose::contacts).noneMatch(Filming::heldOnOneSide)
                && !mirrorsItself();
    }

    private static boolean heldOnOneSide(Contacts contacts) {
        Hand right = contacts.rightHand();
        Hand left = contacts.leftHand();
        return right.hold().support() != left.hold().support();
    }

    /** Poses that show both sides already. */
    private boolean mirrorsItself() {
        return Telling.endsMirrored(scene.keyPoses());
    }
}
