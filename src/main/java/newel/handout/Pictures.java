package newel.handout;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import newel.body.KeyPose;
import newel.body.Trimming;
import newel.catalogue.Variant;
import newel.figure.Camera;
import newel.figure.Drawing;
import newel.figure.Film;
import newel.figure.Filming;
import newel.figure.Look;
import newel.figure.Looks;
import newel.figure.Picture;
import newel.figure.Scene;
import newel.limit.Share;

/** The picture of a variant, drawn at the share of its way that a person is asked to go. */
public final class Pictures {
    /** Enough to look smooth, few enough to send at once (design choice). */
    private static final double FRAMES_A_SECOND = 14;

    private static final int FEWEST = 6;
    private static final int MOST = 24;

    public static Picture of(Variant variant) {
        return of(variant, Share.WHOLE);
    }

    public static Picture of(Variant variant, Share share) {
        return of(variant, share, "");
    }

    /** @param look id of who is drawn; empty for different people */
    public static Picture of(Variant variant, Share share, String look) {
        return of(variant, share, Looks.chosen(look, variant.id()));
    }

    public static Picture of(Variant variant, Share share, Look look) {
        return new Drawing(scene(variant, share, look)).picture(variant.name(), described(variant));
    }

    public static Optional<Film> film(Variant variant, Share share) {
        return film(variant, share, "");
    }

    /** The same geometry as a film; a hold of one pose has nothing to move. */
    public static Optional<Film> film(Variant variant, Share share, String look) {
        return moves(variant)
                ? Optional.of(new Filming(
                                scene(variant, share, Looks.chosen(look, variant.id())), framesPerLeg(variant))
                        .film())
                : Optional.empty();
    }

    public static boolean moves(Variant variant) {
        return variant.keyPoses().size() > 1;
    }

    private static int framesPerLeg(Variant variant) {
        int legs = variant.keyPoses().size() - 1;
        double wanted = FRAMES_A_SECOND * variant.tempo().out() / legs;
        return (int) Math.max(FEWEST, Math.min(MOST, Math.round(wanted)));
    }

    private static Scene scene(Variant variant, Share share, Look look) {
        List<KeyPose> poses =
                Trimming.trimmed(variant.keyPoses(), variant.trim().part(), share.left(), share.right());
        return new Scene(
                poses,
                new Camera(variant.view().yaw(), variant.view().pitch()),
                Surroundings.of(variant),
                WorkingSide.of(variant),
                variant.round(),
                look);
    }

    private static String described(Variant variant) {
        return "From " + variant.keyPoses().stream().map(KeyPose::name).collect(Collectors.joining(" to ")) + ". "
                + String.join(" ", variant.words().steps());
    }

    private Pictures() {}
}
