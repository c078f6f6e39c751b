package newel;

import java.time.LocalDate;
import java.util.List;
import newel.casefile.Demo;
import newel.client.Client;
import newel.limit.Presets;

/** The cast of the demo practice, each named after what makes them different. */
public final class People {
    /** The day on which all tests play. */
    public static final LocalDate TODAY = LocalDate.of(2026, 3, 3);

    private static final Presets PRESETS = Presets.read();

    public static List<Client> all() {
        return Demo.clients(PRESETS, TODAY);
    }

    public static Client painfulShoulder() {
        return person("odile-marchbanks");
    }

    public static Client cannotStand() {
        return person("ambrose-quill");
    }

    public static Client weakSide() {
        return person("benedetta-holloway");
    }

    public static Client fitAndBored() {
        return person("casimir-dunmore");
    }

    public static Client brokenSpineBone() {
        return person("dagny-ashworth");
    }

    public static Client kneesAndPressure() {
        return person("ephraim-bright");
    }

    public static Client outOfBreath() {
        return person("fenella-moss");
    }

    public static Client mustBeReferred() {
        return person("gideon-larkspur");
    }

    private static Client person(String slug) {
        return Demo.client(slug, PRESETS, TODAY);
    }

    private People() {}
}
