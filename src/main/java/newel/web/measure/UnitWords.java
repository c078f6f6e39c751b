package newel.web.measure;

import newel.client.Unit;

/** What a unit is called where there is room for a word. */
final class UnitWords {
    static String of(Unit unit) {
        return switch (unit) {
            case CENTIMETRES -> "Centimetres";
            case INCHES -> "Inches";
            case METRES -> "Metres";
            case YARDS -> "Yards";
            case KILOGRAMS -> "Kilograms";
            case POUNDS -> "Pounds";
            default -> unit.words();
        };
    }

    private UnitWords() {}
}
