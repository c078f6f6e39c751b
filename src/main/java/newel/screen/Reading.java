package newel.screen;

import newel.client.Vitals;

/** Compares one reading with a bound, and tells it; what was not measured crosses no bound. */
final class Reading {
    static boolean felt(Vitals v) {
        return v.symptoms().yesOrUnknown();
    }

    static boolean from(Integer value, int bound) {
        return value != null && value >= bound;
    }

    static boolean over(Integer value, int bound) {
        return value != null && value > bound;
    }

    static boolean under(Integer value, int bound) {
        return value != null && value < bound;
    }

    /** 20 mmHg of the upper or 10 of the lower pressure within 3 minutes (Freeman et al. 2011). */
    static boolean fallsOnStanding(Vitals v) {
        return from(v.posturalDrop(), 20) || from(v.posturalDropLower(), 10);
    }

    static String pressure(Vitals v) {
        return "Blood pressure " + shown(v.systolic()) + "/" + shown(v.diastolic()) + ".";
    }

    static String posturalDrop(Vitals v) {
        boolean upper = from(v.posturalDrop(), 20);
        return "%s pressure falls by %d on standing, and it is felt or not known."
                .formatted(upper ? "Upper" : "Lower", upper ? v.posturalDrop() : v.posturalDropLower());
    }

    static String pulse(Vitals v, String how) {
        return "Resting pulse " + v.restingPulse() + ", " + how + ".";
    }

    private static String shown(Integer value) {
        return value == null ? "not measured" : value.toString();
    }

    private Reading() {}
}
