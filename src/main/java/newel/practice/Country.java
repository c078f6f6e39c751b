package newel.practice;

import java.util.List;
import java.util.Optional;
import newel.source.Known;

/**
 * Where the practice is, and the number that calls an ambulance there.
 *
 * @param code two letters, or {@link #OTHER}
 * @param citation where the number is from
 */
public record Country(String code, String name, String emergencyNumber, String citation, Known known) {
    public static final String OTHER = "other";

    private static final String UNION = "Directive (EU) 2018/1972, article 109: 112 in every member state";
    private static final String NATIONAL = "the national number for an ambulance";

    /** The countries on offer; anywhere else the number is typed. */
    public static final List<Country> ALL = List.of(
            own("au", "Australia", "000"),
            union("at", "Austria"),
            union("be", "Belgium"),
            own("ca", "Canada", "911"),
            union("dk", "Denmark"),
            union("fi", "Finland"),
            union("fr", "France"),
            union("de", "Germany"),
            union("ie", "Ireland"),
            union("it", "Italy"),
            union("nl", "Netherlands"),
            own("nz", "New Zealand", "111"),
            own("no", "Norway", "113"),
            union("pl", "Poland"),
            union("pt", "Portugal"),
            own("za", "South Africa", "10177"),
            union("es", "Spain"),
            union("se", "Sweden"),
            own("ch", "Switzerland", "144"),
            own("gb", "United Kingdom", "999"),
            own("us", "United States", "911"));

    public static Optional<Country> of(String code) {
        return ALL.stream().filter(each -> each.code.equals(code)).findFirst();
    }

    /** A country that is not on the list, by the number that the practice gave. */
    public static Country other(String name, String emergencyNumber) {
        return new Country(OTHER, name, emergencyNumber, "given by the practice itself", Known.COMMON_PRACTICE);
    }

    public boolean listed() {
        return !code.equals(OTHER);
    }

    private static Country union(String code, String name) {
        return new Country(code, name, "112", UNION, Known.FROM_MEMORY);
    }

    private static Country own(String code, String name, String number) {
        return new Country(code, name, number, NATIONAL, Known.FROM_MEMORY);
    }
}
