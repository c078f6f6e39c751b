package newel.web.form;

import java.util.List;

/** One thing that a form asks, with what was answered and what is wrong with it. */
public sealed interface Ask {

    /** @param keys which keys a phone should offer: {@code text}, {@code numeric}, {@code decimal}, {@code tel},
     *     {@code email} */
    record Line(
            String name,
            String label,
            String hint,
            String value,
            String fault,
            String keys,
            String unit,
            boolean optional)
            implements Ask {
        public Line hint(String text) {
            return new Line(name, label, text, value, fault, keys, unit, optional);
        }

        public Line keys(String kind) {
            return new Line(name, label, hint, value, fault, kind, unit, optional);
        }

        public Line unit(String text) {
            return new Line(name, label, hint, value, fault, "decimal", text, optional);
        }

        public Line maybe() {
            return new Line(name, label, hint, value, fault, keys, unit, true);
        }
    }

    /** More than a line of one's own words. */
    record Words(String name, String label, String hint, String value, String fault, boolean optional) implements Ask {
        public Words hint(String text) {
            return new Words(name, label, text, value, fault, optional);
        }

        public Words maybe() {
            return new Words(name, label, hint, value, fault, true);
        }
    }

    /** One of several, or any number of them. */
    record Pick(
            String name,
            String legend,
            String hint,
            List<Option> options,
            boolean many,
            String fault,
            boolean optional,
            Shape shape)
            implements Ask {
        public Pick hint(String text) {
            return new Pick(name, legend, text, options, many, fault, optional, shape);
        }

        public Pick maybe() {
            return new Pick(name, legend, hint, options, many, fault, true, shape);
        }

        public Pick shaped(Shape as) {
            return new Pick(name, legend, hint, options, many, fault, optional, as);
        }
    }

    /** How options stand: one a line, side by side, or the question at the left and its options at the right. */
    enum Shape {
        LINES,
        BESIDE,
        ROW
    }

    record Option(String id, String value, String label, String hint, boolean chosen) {}

    record Day(
            String name,
            String legend,
            String hint,
            String day,
            String month,
            String year,
            String fault,
            boolean optional)
            implements Ask {
        public Day hint(String text) {
            return new Day(name, legend, text, day, month, year, fault, optional);
        }

        public Day maybe() {
            return new Day(name, legend, hint, day, month, year, fault, true);
        }
    }

    /** Several things under one heading. */
    record Group(String title, String intro, List<Ask> asks) implements Ask {}
}
