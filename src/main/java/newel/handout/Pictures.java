package newel.handout;

import java.util.List;
import java.util.stream.Collectors;
import newel.body.Hand;
import newel.body.KeyPose;
import newel.body.Trimming;
import newel.catalogue.Kit;
import newel.catalogue.Variant;
import newel.figure.Drawing;
import newel.figure.Picture;
import newel.limit.Share;

/** The picture of a variant, drawn at the share of its way that a person is asked to go. */
public final class Pictures {
    public static Picture of(Variant variant) {
        return of(variant, Share.WHOLE);
    }

    public static Picture of(Variant variant, Share share) {
        List<KeyPose> poses =
                Trimming.trimmed(variant.keyPoses(), variant.trim().part(), share.left(), share.right());
        Drawing drawing = new Drawing(variant.view().yaw(), variant.view().pitch(), wallBehind(variant), poses);
        return drawing.picture(variant.name(), described(variant));
    }

    private static String described(Variant variant) {
        return "From " + variant.keyPoses().stream().map(KeyPose::name).collect(Collectors.joining(" to ")) + ". "
                + String.join(" ", variant.words().steps());
    }

    private static boolean wallBehind(Variant variant) {
        return variant.kit().contains(Kit.WALL)
                && variant.keyPoses().stream()
                        .map(KeyPose::contacts)
                        .noneMatch(c -> c.rightHand().hold() == Hand.Hold.WALL
                                || c.leftHand().hold() == Hand.Hold.WALL);
    }

    private Pictures() {}
}
