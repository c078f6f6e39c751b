package newel.screen;

import java.util.List;
import newel.source.Known;
import newel.source.Rule;

/**
 * Whose lines on pressure and pulse at rest a practice holds by. The sources disagree; whichever is chosen, very high pressure
 * (180/110) and a pulse over 120 stay red flags.
 */
public enum RestSet {
    INSTRUCTORS(
            "Instructors' list: hold from 180/100, or a pulse over 100",
            "REST-INSTRUCTORS",
            "BACR 2006, phase IV instructor manual",
            Known.SEEN,
            Line.from(180, 100),
            100),
    HEART_FAILURE(
            "Heart-failure guidance: hold over 180/110, or a pulse over 120",
            "REST-HEART-FAILURE",
            "Australian heart-failure exercise guidance (relative contraindication)",
            Known.SEEN,
            Line.over(180, 110),
            120),
    CARDIAC_REHAB(
            "Heart rehabilitation list: hold over 200/100, or a pulse over 120",
            "REST-CARDIAC-REHAB",
            "a US cardiac rehabilitation list; pulse after ATS 2002, Am J Respir Crit Care Med 166:111-117",
            Known.PARTLY,
            Line.over(200, 100),
            120),
    TESTING(
            "Exercise-testing list: hold over 200/110, or a pulse over 120",
            "REST-TESTING",
            "ACSM relative contraindications to testing (attribution from memory); pulse after ATS 2002",
            Known.PARTLY,
            Line.over(200, 110),
            120);

    private final String words;
    private final Rule rule;
    private final Line pressure;
    private final int pulseOver;

    RestSet(String words, String id, String citation, Known known, Line pressure, int pulseOver) {
        this.words = words;
        this.rule = new Rule(id, citation, known);
        this.pressure = pressure;
        this.pulseOver = pulseOver;
    }

    public String words() {
        return words;
    }

    public Rule rule() {
        return rule;
    }

    public List<Rule> rules() {
        return List.of(rule);
    }

    Line pressure() {
        return pressure;
    }

    /** Beats a minute; a resting pulse over this holds. */
    int pulseOver() {
        return pulseOver;
    }

    /** Either figure reaching its bound crosses the line; mmHg. */
    record Line(int systolic, int diastolic) {
        static Line from(int systolic, int diastolic) {
            return new Line(systolic, diastolic);
        }

        /** Pressures are whole numbers: over 200 is from 201. */
        static Line over(int systolic, int diastolic) {
            return new Line(systolic + 1, diastolic + 1);
        }

        boolean crossed(Integer upper, Integer lower) {
            return upper != null && upper >= systolic || lower != null && lower >= diastolic;
        }
    }
}
