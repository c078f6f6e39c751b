package newel.body;

/** Reads clinical angles, in degrees, back from rotations. */
final class Angles {
    /** Hip from pelvis to thigh: R = Rz(flex) Rx(−s·abd) Ry(−s·out). */
    static Leg hip(Leg leg, Rot relative, Side side) {
        int s = side.sign();
        double abd = -s * degrees(Math.asin(clamp(relative.y().z())));
        double flex = degrees(Math.atan2(-relative.y().x(), relative.y().y()));
        double out = -s * degrees(Math.atan2(-relative.x().z(), relative.z().z()));
        return new Leg(flex, abd, out, leg.knee(), leg.ankle(), leg.footTurn(), leg.footTip());
    }

    /** Ankle from shank to foot: R = Rz(ankle) Ry(−s·turn) Rx(s·tip). */
    static Leg ankle(Leg leg, Rot relative, Side side) {
        int s = side.sign();
        double turn = -s * degrees(Math.asin(clamp(-relative.x().z())));
        double ankle = degrees(Math.atan2(relative.x().y(), relative.x().x()));
        double tip = s * degrees(Math.atan2(relative.y().z(), relative.z().z()));
        return new Leg(leg.flex(), leg.abd(), leg.out(), leg.knee(), ankle, turn, tip);
    }

    /** Shoulder from thorax to upper arm: R = Ry(−a) Rz(raise) Ry(a) Ry(−s·turn), a = s(90 − plane). */
    static Arm shoulder(Arm arm, Rot relative, Side side) {
        int s = side.sign();
        Vec down = relative.y().times(-1);
        double raise = degrees(Math.acos(clamp(-down.y())));
        boolean hangs = Math.hypot(down.x(), down.z()) < 1e-9;
        double plane = hangs ? arm.plane() : wrap(90 - s * degrees(Math.atan2(down.z(), down.x())));
        Rot twist = swing(plane, raise, side).inverse().then(relative);
        double turn = -s * degrees(Math.atan2(-twist.x().z(), twist.x().x()));
        return arm.withUpper(plane, raise, wrap(turn), arm.elbow());
    }

    /** The upper arm swung up from hanging without roll. */
    static Rot swing(double plane, double raise, Side side) {
        double a = side.sign() * (90 - plane);
        return Rot.aboutY(-a).then(Rot.aboutZ(raise)).then(Rot.aboutY(a));
    }

    static double degrees(double radians) {
        return Math.toDegrees(radians);
    }

    /** Into (−180, 180]. */
    static double wrap(double degrees) {
        double turned = Math.IEEEremainder(degrees, 360);
        return turned <= -180 ? turned + 360 : turned;
    }

    private static double clamp(double sine) {
        return Math.max(-1, Math.min(1, sine));
    }

    private Angles() {}
}
