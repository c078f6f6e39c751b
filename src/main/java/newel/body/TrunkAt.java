package newel.body;

/** Where the trunk and head are: points in statures, rotations in the world. */
public record TrunkAt(
        Vec pelvis,
        Vec lumbosacral,
        Vec waist,
        Vec c7,
        Vec skullBase,
        Rot pelvisTurn,
        Rot lumbarTurn,
        Rot thoraxTurn,
        Rot neckTurn,
        Rot headTurn) {

    /** Chains the trunk up from the pelvis. */
    static TrunkAt of(Pose pose, Vec pelvis) {
        Pelvis p = pose.pelvis();
        Rot pelvisTurn = Rot.aboutY(-p.turn()).then(Rot.aboutX(p.list())).then(Rot.aboutZ(-p.tilt()));
        Rot lumbarTurn = pelvisTurn.then(spine(pose.lumbar()));
        Rot thoraxTurn = lumbarTurn.then(spine(pose.thorax()));
        Rot neckTurn = thoraxTurn.then(spine(pose.neck()));
        Rot headTurn = neckTurn.then(Rot.aboutZ(-pose.nod()));
        Vec lumbosacral = pelvis.plus(pelvisTurn.y().times(Build.HIPS_TO_LUMBOSACRAL));
        Vec waist = lumbosacral.plus(lumbarTurn.y().times(Build.LUMBOSACRAL_TO_WAIST));
        Vec c7 = waist.plus(thoraxTurn.y().times(Build.WAIST_TO_C7));
        Vec skullBase = c7.plus(neckTurn.of(Build.SKULL_BASE));
        return new TrunkAt(
                pelvis, lumbosacral, waist, c7, skullBase, pelvisTurn, lumbarTurn, thoraxTurn, neckTurn, headTurn);
    }

    private static Rot spine(Spine part) {
        return Rot.aboutZ(-part.flex()).then(Rot.aboutX(part.side())).then(Rot.aboutY(-part.turn()));
    }

    public Vec hip(Side side) {
        return pelvis.plus(pelvisTurn.z().times(side.sign() * Build.HALF_HIPS));
    }

    /** Shoulder centre, moved by the shoulder blade's lift and reach. */
    public Vec shoulder(Side side, Arm arm) {
        int s = side.sign();
        Vec collar = Rot.aboutY(s * arm.forward())
                .then(Rot.aboutX(-s * arm.lift()))
                .of(new Vec(0, 0, s * Build.COLLAR_BONE));
        Vec inner = new Vec(0, Build.WAIST_TO_SHOULDERS, s * (Build.HALF_SHOULDERS - Build.COLLAR_BONE));
        return waist.plus(thoraxTurn.of(inner.plus(collar)));
    }

    /** Middle between the shoulders with the shoulder blades at rest. */
    public Vec midShoulders() {
        return waist.plus(thoraxTurn.y().times(Build.WAIST_TO_SHOULDERS));
    }

    public Vec head() {
        return skullBase.plus(headTurn.of(Build.HEAD_CENTRE));
    }

    public Vec ear() {
        return skullBase.plus(headTurn.of(Build.EAR));
    }

    public Vec crown() {
        return skullBase.plus(headTurn.of(Build.CROWN));
    }

    public Vec nose() {
        return skullBase.plus(headTurn.of(Build.NOSE));
    }

    public Vec chin() {
        return skullBase.plus(headTurn.of(Build.CHIN));
    }

    /** Two thirds up the thorax and a little in front of the spine: from memory, for "head below heart" only. */
    public Vec heart() {
        return waist.plus(thoraxTurn.of(new Vec(0.03, 0.09, 0)));
    }
}
