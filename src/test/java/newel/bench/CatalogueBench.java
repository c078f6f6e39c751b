package newel.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import newel.People;
import newel.Shipped;
import newel.adapt.Adaptation;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.limit.Fit;
import newel.limit.Limits;
import newel.screen.Screening;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * How long one variant's fit for one person takes, and one adaptation, over all people of the demo and all variants. The
 * machine's bare numbers stand beside them: a thousand sines, and a walk through eight megabytes of memory.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class CatalogueBench {
    private record Asked(Variant variant, Limits limits) {}

    private final List<Asked> asked = new ArrayList<>();
    private final long[] memory = new long[1 << 20];
    private int next;

    public CatalogueBench() {
        for (Client client : People.all()) {
            Limits limits = Limits.of(
                    client.limitations(),
                    client.homeLimits(),
                    Screening.of(client).limits());
            Shipped.CATALOGUE.variants().forEach(variant -> asked.add(new Asked(variant, limits)));
        }
    }

    private Asked next() {
        next = (next + 7) % asked.size();
        return asked.get(next);
    }

    @Benchmark
    public void bare_thousand_sines(Blackhole hole) {
        for (int i = 0; i < 1000; i++) {
            hole.consume(Math.sin(i));
        }
    }

    @Benchmark
    public long bare_eight_megabytes() {
        long sum = 0;
        for (long each : memory) {
            sum += each;
        }
        return sum;
    }

    @Benchmark
    public Fit one_fit() {
        Asked each = next();
        return Shipped.FITTING.fit(each.variant(), each.limits());
    }

    @Benchmark
    public Adaptation one_adaptation() {
        Asked each = next();
        return Shipped.ADAPTING.adapt(each.variant(), each.limits());
    }
}
