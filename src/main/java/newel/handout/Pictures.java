package newel.handout;

import java.util.List;
import java.util.stream.Collectors;
import newel.body.KeyPose;
import newel.body.Trimming;
import newel.catalogue.Variant;
import newel.figure.Camera;
import newel.figure.Drawing;
import newel.figure.Look;
import newel.figure.Looks;
import newel.figure.Picture;
import newel.figure.Scene;
import newel.limit.Share;

/** The picture of a variant, drawn at the share of its way that a person is asked to go. */
public final class Pictures {
    public static Picture of(Variant variant) {
        return of(variant, Share.WHOLE);
    }

    public static Picture of(Variant variant, Share share) {
        return of(variant, share, Looks.spread(variant.id()));
    }

    public static Picture of(Variant variant, Share share, Look look) {
        List<KeyPose> poses =
                Trimming.trimmed(variant.keyPoses(), variant.trim().part(), share.left(), share.right());
        Scene scene = new Scene(
                poses,
                new Camera(variant.view().yaw(), variant.view().pitch()),
                Surroundings.of(variant),
                WorkingSide.of(variant),
                variant.round(),
                look);
        return new Drawing(scene).picture(variant.name(), described(variant));
    }

    private static String described(Variant variant) {
        return "From " + variant.keyPoses().stream().map(KeyPose::name).collect(Collectors.joining(" to ")) + ". "
                + String.join(" ", variant.words().steps());
    }

    private Pictures() {}
}
