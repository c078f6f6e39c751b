package newel.limit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import newel.body.Joint;
import newel.body.Motion;
import newel.catalogue.Grip;
import newel.catalogue.Position;
import newel.catalogue.Support;

/** A limit as it is written in a data file: one key that says its kind, and its figure. */
public final class WrittenLimit {

    /** On the sides it names; limits without sides stay as they are. */
    public static Limit of(JsonNode node, Sided side) {
        Limit limit = of(node);
        return limit instanceof Limit.OfSide sided ? sided.on(side) : limit;
    }

    /** @throws IllegalArgumentException in words, when it is no limit */
    static Limit of(JsonNode node) {
        if (node.has("angle")) {
            return new Limit.Angle(constant(Motion.class, node.get("angle")), Sided.BOTH, number(node, "max"));
        }
        if (node.has("load")) {
            return new Limit.Load(constant(Joint.class, node.get("load")), Sided.BOTH, number(node, "max"));
        }
        if (node.has("time")) {
            return new Limit.Time(constant(Limit.Lasting.class, node.get("time")), (int) number(node, "max"));
        }
        if (node.has("avoid")) {
            return new Limit.Avoid(constant(Avoidance.class, node.get("avoid")));
        }
        if (node.has("support")) {
            return new Limit.SupportNeeded(constant(Support.class, node.get("support")));
        }
        if (node.has("positions")) {
            Set<Position> allowed = EnumSet.noneOf(Position.class);
            node.get("positions").forEach(each -> allowed.add(constant(Position.class, each)));
            return new Limit.Positions(allowed);
        }
        return ofHandOrEffort(node);
    }

    private static Limit ofHandOrEffort(JsonNode node) {
        if (node.has("grip")) {
            return new Limit.GripAtMost(Sided.BOTH, constant(Grip.class, node.get("grip")));
        }
        if (node.has("wrist")) {
            return new Limit.NoWristWeight(Sided.BOTH);
        }
        if (node.has("held")) {
            return new Limit.HeldAtMost(Sided.BOTH, number(node, "held"));
        }
        if (node.has("effort")) {
            return new Limit.EffortAtMost((int) number(node, "effort"));
        }
        if (node.has("coordination")) {
            return new Limit.CoordinationAtMost((int) number(node, "coordination"));
        }
        throw new IllegalArgumentException("no known limit");
    }

    private static double number(JsonNode node, String name) {
        if (!node.path(name).isNumber()) {
            throw new IllegalArgumentException(name + " is not a number");
        }
        return node.get(name).asDouble();
    }

    private static <E extends Enum<E>> E constant(Class<E> type, JsonNode node) {
        return Enum.valueOf(type, node.asText().toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private WrittenLimit() {}
}
