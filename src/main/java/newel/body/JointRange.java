package newel.body;

import java.util.Map;

/**
 * How far each motion may go in any picture, degrees: the drawing caps of the project's envelope for older adults, a
 * design choice derived from Boone and Azen 1979, Walker 1984, AAOS, Soucie 2011 (limbs), Troke 2005 (low back) and the
 * AMA figures (neck). Motions that the envelope leaves out carry their own source.
 */
public final class JointRange {
    private static final Map<Motion, Integer> MOST = Map.ofEntries(
            Map.entry(Motion.SHOULDER_RAISE, 180),
            Map.entry(Motion.SHOULDER_ABDUCTION, 180),
            Map.entry(Motion.SHOULDER_EXTENSION, 60),
            Map.entry(Motion.SHOULDER_OUT, 105),
            Map.entry(Motion.SHOULDER_IN, 90),
            Map.entry(Motion.ELBOW_BEND, 150),
            // A flat palm that carries: 90 is the most that a hand on a level surface can need (geometry).
            Map.entry(Motion.WRIST_BACK, 90),
            Map.entry(Motion.HIP_FLEXION, 140),
            Map.entry(Motion.HIP_EXTENSION, 20),
            Map.entry(Motion.HIP_ABDUCTION, 45),
            // Adduction AAOS 30; inward turn AAOS 45.
            Map.entry(Motion.HIP_ADDUCTION, 30),
            Map.entry(Motion.HIP_OUT, 45),
            Map.entry(Motion.HIP_IN, 45),
            Map.entry(Motion.KNEE_BEND, 150),
            Map.entry(Motion.KNEE_BEND_LOADED, 150),
            Map.entry(Motion.ANKLE_UP, 25),
            Map.entry(Motion.ANKLE_DOWN, 65),
            Map.entry(Motion.LOW_BACK_FLEXION, 73),
            Map.entry(Motion.LOW_BACK_EXTENSION, 29),
            Map.entry(Motion.LOW_BACK_SIDE, 28),
            Map.entry(Motion.LOW_BACK_TURN, 7),
            // Upper back: turn from the envelope; bends are what AAOS gives for the whole spine less the low back.
            Map.entry(Motion.UPPER_BACK_FLEXION, 35),
            Map.entry(Motion.UPPER_BACK_EXTENSION, 20),
            Map.entry(Motion.UPPER_BACK_SIDE, 20),
            Map.entry(Motion.UPPER_BACK_TURN, 35),
            Map.entry(Motion.NECK_FLEXION, 60),
            Map.entry(Motion.NECK_EXTENSION, 70),
            Map.entry(Motion.NECK_SIDE, 45),
            Map.entry(Motion.NECK_TURN, 80));

    public static int most(Motion motion) {
        return MOST.get(motion);
    }

    private JointRange() {}
}
