package newel.limit;

/** The partial order of limits: one implies another when whatever keeps the first keeps the second. */
public final class Tightness {
    private Tightness() {}

    /** Whether keeping the tight limit always keeps the loose one. */
    public static boolean implies(Limit tight, Limit loose) {
        return switch (loose) {
            case Limit.Angle b ->
                tight instanceof Limit.Angle a
                        && a.motion() == b.motion()
                        && covers(a.side(), b.side())
                        && a.maxDegrees() <= b.maxDegrees();
            case Limit.Load b ->
                tight instanceof Limit.Load a
                        && a.joint() == b.joint()
                        && covers(a.side(), b.side())
                        && a.maxBwH() <= b.maxBwH();
            case Limit.Positions b ->
                tight instanceof Limit.Positions a && b.allowed().containsAll(a.allowed());
            case Limit.SupportNeeded b ->
                tight instanceof Limit.SupportNeeded a && a.least().compareTo(b.least()) <= 0;
            case Limit.Time b ->
                tight instanceof Limit.Time a && a.what() == b.what() && a.maxSeconds() <= b.maxSeconds();
            case Limit.GripAtMost b ->
                tight instanceof Limit.GripAtMost a
                        && covers(a.side(), b.side())
                        && a.most().compareTo(b.most()) <= 0;
            case Limit.NoWristWeight b -> tight instanceof Limit.NoWristWeight a && covers(a.side(), b.side());
            case Limit.HeldAtMost b ->
                tight instanceof Limit.HeldAtMost a
                        && covers(a.side(), b.side())
                        && a.maxBodyMasses() <= b.maxBodyMasses();
            case Limit.CoordinationAtMost b -> tight instanceof Limit.CoordinationAtMost a && a.most() <= b.most();
            case Limit.EffortAtMost b -> tight instanceof Limit.EffortAtMost a && a.most() <= b.most();
            case Limit.Avoid b -> tight instanceof Limit.Avoid a && a.what() == b.what();
            case Limit.KitAtHome b ->
                tight instanceof Limit.KitAtHome a && b.kit().containsAll(a.kit());
            case Limit.Ceiling b -> tight instanceof Limit.Ceiling a && a.maxStatures() <= b.maxStatures();
            case Limit.Withheld b -> tight instanceof Limit.Withheld a && a.kind() == b.kind();
            case Limit.ClearSpace b -> tight instanceof Limit.ClearSpace a && a.metres() <= b.metres();
        };
    }

    private static boolean covers(Sided wide, Sided narrow) {
        return wide == Sided.BOTH || wide == narrow;
    }
}
