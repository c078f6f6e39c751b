package newel.web.movement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import newel.body.Demands;
import newel.body.Joint;
import newel.body.Motion;
import newel.body.Side;
import newel.catalogue.Quiet;
import newel.client.Profile;
import newel.web.limitation.MotionWords;

/** What a form asks of the body, in words and figures. */
final class Asks {
    /** Standard gravity, metres per second squared. */
    private static final double GRAVITY = 9.80665;

    /** Smaller figures say nothing, statures and shares. */
    private static final double TOO_SMALL = 0.005;

    static List<VariantPage.Angle> angles(Demands asked) {
        return Arrays.stream(Motion.values())
                .filter(motion -> DemandWords.most(asked, motion) > Quiet.angle(motion))
                .map(motion -> new VariantPage.Angle(
                        MotionWords.of(motion),
                        DemandWords.degrees(asked.angle(motion, Side.LEFT)),
                        DemandWords.degrees(asked.angle(motion, Side.RIGHT))))
                .toList();
    }

    static List<VariantPage.Load> loads(Demands asked, Optional<Chosen> chosen) {
        return Arrays.stream(Joint.values())
                .map(joint -> {
                    double load = DemandWords.most(asked, joint);
                    return new VariantPage.Load(
                            DemandWords.of(joint),
                            DemandWords.load(load),
                            DemandWords.beside(joint, load),
                            moment(load, chosen));
                })
                .toList();
    }

    private static String moment(double load, Optional<Chosen> chosen) {
        return chosen.map(each -> each.client().profile())
                .filter(profile -> profile.massKg() != null)
                .map(profile -> Math.round(load * weightTimesHeight(profile)) + " N m")
                .orElse("");
    }

    /** Newton metres. */
    private static double weightTimesHeight(Profile profile) {
        return profile.massKg() * GRAVITY * profile.statureCm() / 100;
    }

    static String loadNote(Optional<Chosen> chosen) {
        String what = "The largest still moment on the way, in percent of body weight times height.";
        return chosen.map(each -> each.client().profile())
                .map(profile -> profile.massKg() == null
                        ? what + " In newton metres once this client's weight is known."
                        : what + " In newton metres for this client.")
                .orElse(what);
    }

    static List<VariantPage.Line> others(Demands asked) {
        List<VariantPage.Line> lines = new ArrayList<>();
        lines.add(new VariantPage.Line("Highest reach", DemandWords.percent(asked.fingertips()) + " of body height"));
        if (asked.armsHigh() > TOO_SMALL) {
            lines.add(new VariantPage.Line(
                    "Elbows at shoulder height or above", DemandWords.percent(asked.armsHigh()) + " of the way"));
        }
        if (asked.handShare() > TOO_SMALL) {
            lines.add(new VariantPage.Line(
                    "Most on one hand", DemandWords.percent(asked.handShare()) + " of body weight"));
        }
        if (Double.isFinite(asked.margin())) {
            lines.add(new VariantPage.Line(
                    "Balance to spare",
                    DemandWords.percent(asked.margin())
                            + " of body height, from the centre of mass to the edge of the base"));
        }
        lines.add(new VariantPage.Line("Head below the heart", asked.headBelowHeart() ? "yes" : "no"));
        return lines;
    }

    private Asks() {}
}
