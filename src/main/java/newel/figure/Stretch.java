package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import newel.body.Path;
import newel.body.Posed;

/** The way from one shown key pose to the next, solved once. */
record Stretch(List<Posed> poses) {
    private static final int STEPS = 16;

    static List<Stretch> all(Path path) {
        return IntStream.range(0, path.legs()).mapToObj(leg -> of(path, leg)).toList();
    }

    private static Stretch of(Path path, int leg) {
        List<Posed> poses = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            poses.add(path.at(leg, (double) i / STEPS));
        }
        return new Stretch(poses);
    }

    Posed from() {
        return poses.getFirst();
    }

    Posed to() {
        return poses.getLast();
    }
}
