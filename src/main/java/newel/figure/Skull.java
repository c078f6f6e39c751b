package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import newel.body.Rot;
import newel.body.TrunkAt;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/** The skull and places on it, named by directions in the head's own frame. */
final class Skull {
    private static final int STEP = 8;
    private static final List<Vec> DIRECTIONS = directions();

    private final Brush brush;
    private final TrunkAt trunk;
    private final Ellipsoid solid;

    Skull(Brush brush, TrunkAt trunk) {
        this.brush = brush;
        this.trunk = trunk;
        this.solid = new Ellipsoid(trunk.head(), trunk.headTurn(), .0565, .066, .0455);
    }

    Vec centre() {
        return solid.centre();
    }

    Rot turn() {
        return trunk.headTurn();
    }

    Vec nose() {
        return trunk.nose();
    }

    Ellipsoid solid() {
        return solid;
    }

    Vec surface(Vec direction) {
        return solid.surface(direction);
    }

    /** A round thing at a place in the head's own frame, statures from the skull's centre. */
    Ellipsoid at(double ahead, double up, double right, double x, double y, double z) {
        return new Ellipsoid(centre().plus(turn().of(new Vec(ahead, up, right))), turn(), x, y, z);
    }

    /** How much a place of the skull turns towards the viewer, −1 to 1. */
    double facing(Vec direction) {
        Vec normal = new Vec(direction.x() / solid.x(), direction.y() / solid.y(), direction.z() / solid.z()).unit();
        return brush.towards(turn().of(normal));
    }

    /** Outline of the part of the surface that is seen and chosen; empty when it is next to nothing. */
    List<Spot> part(Predicate<Vec> chosen, double grown) {
        List<Spot> spots = new ArrayList<>();
        for (Vec direction : DIRECTIONS) {
            if (chosen.test(direction) && facing(direction) > -0.02) {
                spots.add(brush.camera()
                        .see(centre().plus(surface(direction).minus(centre()).times(grown))));
            }
        }
        return spots.size() > 6 ? Solid.hull(spots) : List.of();
    }

    private static List<Vec> directions() {
        List<Vec> directions = new ArrayList<>();
        for (int latitude = -85; latitude <= 85; latitude += STEP) {
            for (int longitude = 0; longitude < 360; longitude += STEP) {
                double lat = Math.toRadians(latitude);
                double lon = Math.toRadians(longitude);
                directions.add(new Vec(Math.cos(lat) * Math.cos(lon), Math.sin(lat), Math.cos(lat) * Math.sin(lon)));
            }
        }
        return directions;
    }
}
