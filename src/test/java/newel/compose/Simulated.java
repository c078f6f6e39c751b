package newel.compose;

import static newel.Shipped.CATALOGUE;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import newel.People;
import newel.Shipped;
import newel.catalogue.Kit;
import newel.client.Answer;
import newel.client.Client;
import newel.client.Experience;
import newel.client.Goal;
import newel.client.Home;
import newel.client.Wishes;
import newel.limit.Limitation;
import newel.limit.Preset;
import newel.limit.Sided;

/** A simulated client: somebody of the cast with another home, other wishes and up to four limitations. */
final class Simulated {
    static Client client(long seed) {
        Random random = new Random(seed);
        List<Client> cast = People.all();
        Client one = cast.get(random.nextInt(cast.size()));
        List<Limitation> limitations = new ArrayList<>();
        List<Preset> presets = Shipped.PRESETS.all();
        for (int more = random.nextInt(5); more > 0; more--) {
            Preset preset = presets.get(random.nextInt(presets.size()));
            Sided side = preset.sided() ? Sided.values()[random.nextInt(3)] : Sided.BOTH;
            limitations.add(preset.limitation("l" + more, "", side, Limitation.Source.CLIENT, People.TODAY, null));
        }
        return new Client(
                one.id(),
                one.profile(),
                home(random),
                wishes(random),
                one.readiness(),
                one.falls(),
                one.vitals(),
                one.measures(),
                limitations);
    }

    private static Home home(Random random) {
        Set<Kit> kit = EnumSet.of(Kit.CHAIR);
        for (Kit each : Kit.values()) {
            if (random.nextInt(3) > 0) {
                kit.add(each);
            }
        }
        return new Home(kit, 220 + random.nextInt(60), Answer.of(random.nextInt(4) == 0), random.nextInt(3));
    }

    private static Wishes wishes(Random random) {
        List<Goal> goals = new ArrayList<>(List.of(Goal.values()));
        Collections.shuffle(goals, random);
        List<DayOfWeek> days = new ArrayList<>(List.of(DayOfWeek.values()));
        Collections.shuffle(days, random);
        int[] minutes = {10, 15, 20, 25, 25, 25, 30, 40, 60};
        return new Wishes(
                goals.subList(0, 1 + random.nextInt(3)),
                minutes[random.nextInt(minutes.length)],
                Set.copyOf(days.subList(0, 1 + random.nextInt(5))),
                Experience.values()[random.nextInt(3)]);
    }

    /** Prints a table over many: {@code Simulated 10000}. */
    public static void main(String[] arguments) {
        int many = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 10_000;
        SimulatedTable table = new SimulatedTable();
        Composer composer = new Composer(CATALOGUE);
        for (long seed = 1; seed <= many; seed++) {
            table.add(seed, client(seed), composer);
        }
        table.print(System.out);
    }

    private Simulated() {}
}
