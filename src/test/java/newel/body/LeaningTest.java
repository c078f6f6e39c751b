package newel.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A straight body that leans on both hands, arms square to it, its feet on the balls. */
class LeaningTest {
    /** Stature of the people that the heights of the study are taken to be of; from memory. */
    private static final double STATURE_CM = 178;

    /** Ebben 2011, J Strength Cond Res 25:2891: share of body weight on the hands when they are raised. */
    @ParameterizedTest
    @CsvSource({"0, 0.64", "30, 0.55", "61, 0.41"})
    void hands_carry_what_a_force_plate_under_raised_hands_shows(double raisedCm, double measured) {
        Posed posed = straight(raisedCm / STATURE_CM);

        double down = Leaning.on(posed, Side.RIGHT).push().y() * 2;

        assertEquals(measured, down, 0.06);
    }

    @Test
    void a_stated_share_is_taken_as_it_stands() {
        Hand wall = Hand.of(Hand.Hold.WALL, new Vec(0.3, 0.8, 0.1), 0.04);
        Contacts c = Poses.STANDING;
        Posed posed = Solver.pose(
                Pose.NEUTRAL, new Contacts(c.ground(), 0, c.rightFoot(), c.leftFoot(), wall, Hand.FREE, 0, 0));

        assertEquals(new Vec(-0.04, 0, 0), Leaning.on(posed, Side.RIGHT).push());
        assertEquals(0.04, Leaning.share(posed, Side.RIGHT));
    }

    @Test
    void nothing_is_carried_by_hands_that_touch_while_the_body_stands_upright() {
        assertEquals(0, Leaning.share(straightAt(0, 0.8), Side.RIGHT));
    }

    /** The palm's height above the floor is that of the raised hands when the body is tipped so far. */
    private static Posed straight(double handHeight) {
        double tip = 0;
        double best = Double.MAX_VALUE;
        for (double each = 20; each < 89; each += 0.05) {
            double off = Math.abs(palm(straightAt(each, 0)) - handHeight);
            if (off < best) {
                best = off;
                tip = each;
            }
        }
        return straightAt(tip, palm(straightAt(tip, 0)));
    }

    private static double palm(Posed posed) {
        return posed.rightArm().palm().y();
    }

    /** Tipped from the ankles, so that hips and knees stay straight. */
    private static Posed straightAt(double tip, double height) {
        Arm arm = new Arm(90, 90, 0, 0, 0, 0, 0, 0);
        Leg leg = new Leg(0, 0, 0, 0, 0, 0, 0);
        Pose n = Pose.NEUTRAL;
        Pose pose = new Pose(new Pelvis(tip, 0, 0), n.lumbar(), n.thorax(), n.neck(), 0, arm, arm, leg, leg);
        double x = (Build.THIGH + Build.SHANK) * Math.sin(Math.toRadians(tip));
        double y = Build.ANKLE_HEIGHT + (Build.THIGH + Build.SHANK) * Math.cos(Math.toRadians(tip));
        Foot ball = new Foot(Foot.Placement.BALL, 0, 0.045, 0, -tip, 0);
        Foot left = new Foot(Foot.Placement.BALL, 0, -0.045, 0, -tip, 0);
        Hand hand = Hand.of(Hand.Hold.HEAD, new Vec(0, height, 0), Hand.LEANS);
        return Solver.at(
                pose, new Contacts(Ground.FEET, 0, ball, left, hand, hand, 0, 0), new Vec(x, y, 0).plus(lift(tip)));
    }

    /** The ankle rises and goes forward as the heel comes off, about the ball. */
    private static Vec lift(double tip) {
        Foot foot = new Foot(Foot.Placement.BALL, 0, 0.045, 0, -tip, 0);
        Vec ankle = Legs.ankle(foot, Side.RIGHT);
        return new Vec(ankle.x(), ankle.y() - Build.ANKLE_HEIGHT, 0);
    }
}
