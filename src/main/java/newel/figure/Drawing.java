package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import newel.body.Path;
import newel.body.Posed;
import newel.body.Vec;

/** Draws a scene's key poses as frames at one scale: the ghost of the pose before, the scene, the arrows. */
public final class Drawing {
    private final Scene scene;
    private final Path path;
    private final List<Stretch> stretches;
    private final Optional<String> side;
    private final double towel;
    private final List<List<Vec>> loops;

    public Drawing(Scene scene) {
        this.scene = scene;
        this.path = new Path(Telling.told(scene.keyPoses()));
        this.stretches = Stretch.all(path);
        this.side = Caption.side(scene, stretches);
        this.towel = Towel.length(path.keys());
        this.loops = Loop.of(scene);
    }

    public Picture picture(String title, String description) {
        return new Picture(title, description, scene.look().style(), CloseUp.tells(path.keys()) ? closeUp() : frames());
    }

    /** The hand in each pose, and beside them the whole person. */
    private List<Frame> closeUp() {
        List<List<Mark>> hands = path.keys().stream().map(CloseUp::marks).toList();
        Framing framing = Framing.of(hands, Optional.empty());
        List<Frame> frames = new ArrayList<>();
        for (int key = 0; key < hands.size(); key++) {
            String name = scene.keyPoses().get(key).name();
            frames.add(new Frame(CloseUp.caption(name), framing.window(), hands.get(key), false));
        }
        frames.add(framing.also(marks(ViewPoint.of(scene), 0), CloseUp.WHOLE));
        return frames;
    }

    private List<Frame> frames() {
        Camera camera = ViewPoint.of(scene);
        List<List<Mark>> drawn = new ArrayList<>();
        for (int key = 0; key < path.keys().size(); key++) {
            drawn.add(marks(camera, key));
        }
        Framing framing = Framing.of(drawn, side);
        List<Frame> frames = new ArrayList<>(framing.frames(drawn));
        SecondView.of(camera, path.keys().getFirst(), stretches)
                .ifPresent(view -> frames.add(framing.also(marks(view.camera(), path.legs()), view.caption())));
        return frames;
    }

    private List<Mark> marks(Camera camera, int key) {
        Posed posed = path.keys().get(key);
        Staging staging = new Staging(scene, camera, path.keys(), towel);
        List<Piece> figure = staging.figure(posed);
        List<Piece> ghosts =
                key == 0 ? List.of() : Ghosts.of(camera, path.keys().get(key - 1), posed, scene.look());
        List<Mark> marks = new ArrayList<>(staging.marks(posed, figure, ghosts));
        if (key > 0) {
            marks.addAll(new Trail(camera, stretches.get(key - 1), scene.working(), figure, loops).arrows());
        }
        return marks;
    }
}
