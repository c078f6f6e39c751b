package newel.web.stair;

import newel.catalogue.Variant;
import newel.handout.Pictures;
import newel.limit.Share;

/** Where the drawings of a variant at a share are: small ones are files of their own, so that a page of many stays light. */
public final class Drawn {
    /** The folder of its drawings of different people; each side's share in percent. */
    public static String at(Variant variant, Share share) {
        return "/movements/%s/%s/%d-%d"
                .formatted(variant.movement(), variant.id(), percent(share.left()), percent(share.right()));
    }

    /** @param look id of who is drawn; empty for different people */
    public static String at(Variant variant, Share share, String look) {
        return look.isEmpty() ? at(variant, share) : at(variant, share) + "/" + look;
    }

    /** Where the film of it is; empty for a hold, which has nothing to move. */
    public static String motion(Variant variant, Share share, String look) {
        return Pictures.moves(variant) ? at(variant, share, look) + "/motion.json" : "";
    }

    private static long percent(double share) {
        return Math.round(100 * share);
    }

    private Drawn() {}
}
