package newel.adapt;

import newel.catalogue.Variant;
import newel.limit.Share;

/**
 * The training value lost when a variant at a share stands in for a wanted one. All weights are design choices: leaving
 * the purpose costs most, then going less of the way, then less challenge; each link costs a little, so that of two equal
 * forms the nearer is taken, and another movement costs as much as four links.
 *
 * <p>The purpose lost is the angle between the two purpose vectors, 0 for the same and 1 at a right angle, rather than one
 * minus its cosine: angles add up along a way, which keeps adapting twice from changing anything.
 */
final class Loss {
    static final double PURPOSE = 2;
    static final double RANGE = 0.8;
    static final double CHALLENGE = 1;
    static final double LINK = 0.06;
    static final double OTHER_MOVEMENT = 4 * LINK;

    private final Challenges challenges;

    Loss(Challenges challenges) {
        this.challenges = challenges;
    }

    /** @param links steps between the two, −1 when they belong to different movements */
    double of(Variant wanted, Variant variant, Share share, int links) {
        return whole(wanted, variant, links) + RANGE * (1 - share.mean());
    }

    /** What is lost even when the variant is done the whole way. */
    double whole(Variant wanted, Variant variant, int links) {
        double along = links < 0 ? OTHER_MOVEMENT : LINK * links;
        return PURPOSE * apart(wanted, variant) + CHALLENGE * (challenges.of(wanted) - challenges.of(variant)) + along;
    }

    private static double apart(Variant a, Variant b) {
        if (a.purposes().equals(b.purposes())) {
            return 0;
        }
        double cosine = Math.min(1, a.purposes().nearness(b.purposes()));
        return Math.acos(cosine) / (Math.PI / 2);
    }
}
