package newel.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import newel.People;
import newel.Shipped;
import newel.client.Client;
import newel.compose.Composed;
import newel.compose.Composer;
import newel.compose.Level;
import newel.compose.Levels;
import newel.compose.Suiting;
import newel.compose.Wish;
import newel.program.Drafting;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One session composed on the full catalogue, people of the demo taking turns; percentiles are of single sessions. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class ComposeBench {
    private record Asked(Wish wish, Suiting suiting) {}

    @Param({"25", "60"})
    public int minutes;

    private final List<Asked> asked = new ArrayList<>();
    private final Composer composer = new Composer(Shipped.CATALOGUE);
    private int next;

    public ComposeBench() {
        for (Client client : People.all()) {
            asked.add(new Asked(Drafting.wish(client, Levels.all(Level.BEGINNER)), Shipped.suiting(client)));
        }
    }

    @Benchmark
    public Composed one_session() {
        next = (next + 1) % asked.size();
        Asked each = asked.get(next);
        return composer.compose(each.wish().withMinutes(minutes), each.suiting());
    }
}
