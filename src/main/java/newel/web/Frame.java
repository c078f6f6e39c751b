package newel.web;

import java.util.List;

/**
 * What stands around every page.
 *
 * @param token goes into every form
 * @param path the page's own path, to mark the place it belongs to
 * @param around the practice that the page belongs to
 * @param assets changes with each start, so that a browser takes new styles at once
 */
public record Frame(String token, String path, String assets, Note note, Around around) {

    /** One of the few places that the line on top leads to. */
    public record Place(String name, String path) {}

    private static final List<Place> PLACES =
            List.of(new Place("Clients", "/clients"), new Place("Movements", "/movements"));

    private static final List<String> SHEETS = List.of(
            "base",
            "type",
            "layout",
            "forms",
            "client",
            "screen",
            "intake",
            "figure",
            "program",
            "stair",
            "map",
            "movement",
            "measure",
            "source",
            "referral");

    public List<Place> places() {
        return PLACES;
    }

    /** Style sheets, in the order they are loaded. */
    public List<String> sheets() {
        return SHEETS;
    }

    public boolean at(Place place) {
        return path.equals(place.path()) || path.startsWith(place.path() + "/");
    }
}
