package newel.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import newel.body.Ground;
import newel.body.KeyPose;
import newel.body.Path;
import newel.body.Posed;

/** Draws a movement's key poses as frames at one scale: the ghost of the pose before, the scene, the arrows. */
public final class Drawing {
    private final Camera camera;
    private final Path path;
    private final Room room;

    public Drawing(double yaw, double pitch, boolean wallBehind, List<KeyPose> keyPoses) {
        this.camera = new Camera(ViewPoint.yaw(yaw, keyPoses), pitch);
        this.path = new Path(Telling.told(keyPoses));
        this.room = new Room(camera, wallBehind, keyPoses);
    }

    public Picture picture(String title, String description) {
        List<List<Mark>> drawn = new ArrayList<>();
        for (int key = 0; key < path.keys().size(); key++) {
            drawn.add(marks(key));
        }
        return new Picture(title, description, Framing.framed(camera, drawn));
    }

    private List<Mark> marks(int key) {
        Posed posed = path.keys().get(key);
        List<Mark> marks = new ArrayList<>();
        if (posed.contacts().ground() != Ground.BED) {
            marks.add(Shadow.under(camera, posed));
        }
        pieces(key, posed).forEach(piece -> marks.addAll(piece.inOrder()));
        if (key > 0) {
            marks.addAll(new Trail(camera, path, key - 1).arrows());
        }
        return marks;
    }

    /** From far to near. */
    private List<Piece> pieces(int key, Posed posed) {
        List<Piece> pieces = new ArrayList<>(room.pieces(posed));
        pieces.addAll(new Person(camera, posed).pieces());
        pieces.addAll(new InHand(camera, posed).pieces());
        if (key > 0) {
            pieces.addAll(Ghosts.of(camera, path.keys().get(key - 1), posed));
        }
        pieces.sort(Comparator.comparingDouble(Piece::depth));
        return pieces;
    }
}
