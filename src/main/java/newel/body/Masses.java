package newel.body;

/**
 * Mass of each segment as a fraction of body mass, and its centre as a share of the way from the first end to the second.
 * Limb values are for one side. Winter 2009, table 4.1 after Dempster 1955, by default; de Leva 1996, table 4, by sex;
 * masses of older adults after Pavol 2002 with Winter's centres.
 *
 * @param head head and neck, centre at the ear
 * @param thorax C7 to waist
 * @param abdomen waist to lumbosacral joint
 * @param pelvis lumbosacral joint to hip centres
 */
public record Masses(
        Segment head,
        Segment thorax,
        Segment abdomen,
        Segment pelvis,
        Segment upperArm,
        Segment forearm,
        Segment hand,
        Segment thigh,
        Segment shank,
        Segment foot) {

    /** @param centre share of the way from the first end of the segment to the second */
    public record Segment(double mass, double centre) {}

    public static final Masses WINTER = new Masses(
            new Segment(.081, 1),
            new Segment(.216, .82),
            new Segment(.139, .44),
            new Segment(.142, .105),
            new Segment(.028, .436),
            new Segment(.016, .43),
            new Segment(.006, .506),
            new Segment(.100, .433),
            new Segment(.0465, .433),
            new Segment(.0145, .5));

    /** Upper, middle and lower trunk stand for thorax, abdomen and pelvis; their ends differ a little (design choice). */
    public static final Masses DE_LEVA_MEN = new Masses(
            new Segment(.0694, 1),
            new Segment(.1596, .45),
            new Segment(.1633, .45),
            new Segment(.1117, .61),
            new Segment(.0271, .5772),
            new Segment(.0162, .4574),
            new Segment(.0061, .3624),
            new Segment(.1416, .4095),
            new Segment(.0433, .4395),
            new Segment(.0137, .4415));

    public static final Masses DE_LEVA_WOMEN = new Masses(
            new Segment(.0668, 1),
            new Segment(.1545, .45),
            new Segment(.1465, .45),
            new Segment(.1247, .49),
            new Segment(.0255, .5754),
            new Segment(.0138, .4559),
            new Segment(.0056, .3427),
            new Segment(.1478, .3612),
            new Segment(.0481, .4352),
            new Segment(.0129, .4014));

    /** Thorax and abdomen share Pavol's one figure as Winter shares his. */
    public static final Masses PAVOL_WOMEN = older(.0739, .2915, .1871, .0301, .0141, .0054, .1162, .0456, .0123);

    public static final Masses PAVOL_MEN = older(.0662, .3253, .1618, .0299, .0175, .0065, .1127, .0441, .0127);

    private static Masses older(
            double head,
            double thoraxAndAbdomen,
            double pelvis,
            double upperArm,
            double forearm,
            double hand,
            double thigh,
            double shank,
            double foot) {
        double thorax = thoraxAndAbdomen * .216 / .355;
        return new Masses(
                new Segment(head, 1),
                new Segment(thorax, .82),
                new Segment(thoraxAndAbdomen - thorax, .44),
                new Segment(pelvis, .105),
                new Segment(upperArm, .436),
                new Segment(forearm, .43),
                new Segment(hand, .506),
                new Segment(thigh, .433),
                new Segment(shank, .433),
                new Segment(foot, .5));
    }

    public double total() {
        return head.mass
                + thorax.mass
                + abdomen.mass
                + pelvis.mass
                + 2 * (upperArm.mass + forearm.mass + hand.mass + thigh.mass + shank.mass + foot.mass);
    }
}
