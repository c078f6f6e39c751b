package newel.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import newel.body.Ground;
import newel.body.Posed;

/**
 * One pose on its stage: shadow, room, figure and what it holds, from far to near.
 *
 * @param keys the key poses that say where things stand
 * @param towel length of the towel, statures
 */
record Staging(Scene scene, Camera camera, List<Posed> keys, double towel) {

    List<Mark> marks(Posed posed) {
        return marks(posed, figure(posed), List.of());
    }

    List<Piece> figure(Posed posed) {
        return new Person(camera, posed, scene.look()).pieces();
    }

    List<Mark> marks(Posed posed, List<Piece> figure, List<Piece> more) {
        List<Mark> marks = new ArrayList<>();
        if (posed.contacts().ground() != Ground.BED) {
            marks.add(Shadow.under(camera, posed));
        }
        pieces(posed, figure, more).forEach(piece -> marks.addAll(piece.inOrder()));
        return marks;
    }

    private List<Piece> pieces(Posed posed, List<Piece> figure, List<Piece> more) {
        Brush brush = new Brush(camera);
        List<Piece> pieces = new ArrayList<>(figure);
        pieces.addAll(new Room(camera, scene.things(), keys).pieces());
        pieces.addAll(new Underlay(brush, posed, scene.things()).pieces());
        pieces.addAll(new Towel(brush, posed, scene.things(), towel).pieces());
        pieces.addAll(new Carrying(brush, posed, scene.things()).pieces());
        pieces.addAll(new Bands(brush, posed, scene.things()).pieces());
        pieces.addAll(more);
        pieces.sort(Comparator.comparingDouble(Piece::depth));
        return pieces;
    }
}
