package newel.figure;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;

/** What leads a movement: the hands, feet, trunk or head that go furthest of themselves. */
final class Leading {
    /** Moves of less than this many statures are no movement. */
    private static final double VISIBLE = 0.008;
    /** A part leads when it moves at least this share of the part that moves most. */
    private static final double LEADS = 0.55;
    /** A knee that goes less far than this over its foot is only an outcome, statures. */
    private static final double KNEE = 0.03;
    /** Beside a foot that tips, smaller moves than this are only its outcome, statures. */
    private static final double OUTCOME = 0.15;
    /** A foot that tips by less than this share of what moves most only gives way. */
    private static final double TIPPING = 0.2;

    /** The ways of what leads from one key pose to the next, the furthest first. */
    static List<Way> ways(Stretch stretch) {
        List<Way> feet = sides(side -> FootLead.way(stretch, side));
        List<Way> arms = sides(side -> ArmLead.way(stretch, side));
        Way trunk = trunk(stretch);
        List<Way> all =
                Stream.of(feet, arms, List.of(trunk)).flatMap(List::stream).toList();
        double most = longest(all);
        List<Way> tipping = Stream.of(Side.values())
                .filter(side -> FootLead.tips(stretch, side))
                .map(side -> FootLead.way(stretch, side))
                .toList();
        if (most < OUTCOME && longest(tipping) > TIPPING * most) {
            return leading(tipping, longest(tipping));
        }
        List<Way> knees = sides(side -> KneeLead.way(stretch, side));
        if (longest(knees) > Math.max(most, KNEE)) {
            return leading(knees, longest(knees));
        }
        boolean limbs = Math.max(longest(feet), longest(arms)) >= trunk.length();
        return leading(limbs ? Stream.concat(feet.stream(), arms.stream()).toList() : all, most);
    }

    /** The furthest that an arm or a leg goes by itself, statures. */
    static double limbs(Stretch stretch) {
        return Math.max(
                longest(sides(side -> FootLead.way(stretch, side))),
                longest(sides(side -> ArmLead.way(stretch, side))));
    }

    private static List<Way> sides(Function<Side, Way> way) {
        return Stream.of(Side.values()).map(way).toList();
    }

    private static List<Way> leading(List<Way> ways, double most) {
        return ways.stream()
                .filter(way -> way.length() > VISIBLE && way.length() >= LEADS * most)
                .sorted(Comparator.comparingDouble(way -> -way.length()))
                .toList();
    }

    private static double longest(List<Way> ways) {
        return ways.stream().mapToDouble(Way::length).max().orElse(0);
    }

    private static Way trunk(Stretch stretch) {
        Way head = furthest(
                Piece.What.HEAD,
                stretch,
                List.of(p -> p.trunk().crown(), p -> p.trunk().nose()));
        Way body = furthest(
                Piece.What.TRUNK,
                stretch,
                List.of(p -> p.trunk().midShoulders(), p -> p.trunk().pelvis()));
        return body.length() > head.length() ? body : head;
    }

    static Way furthest(Piece.What part, Stretch stretch, List<Function<Posed, Vec>> points) {
        return points.stream()
                .map(point -> Way.of(part, stretch, point))
                .max(Comparator.comparingDouble(Way::length))
                .orElseThrow();
    }

    private Leading() {}
}
