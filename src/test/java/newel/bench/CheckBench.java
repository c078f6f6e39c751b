package newel.bench;

import java.util.concurrent.TimeUnit;
import newel.catalogue.Catalogues;
import newel.catalogue.ReadCatalogue;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;

/** Reading and checking the whole catalogue, once in each of five new processes, as the command line does it. */
public class CheckBench {
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    @Fork(5)
    public ReadCatalogue check_from_cold() {
        return Catalogues.read();
    }

    /** As the README advises for the command line: a short run has no time to win back what full compiling costs. */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    @Fork(value = 5, jvmArgsAppend = "-XX:TieredStopAtLevel=1")
    public ReadCatalogue check_from_cold_compiled_lightly() {
        return Catalogues.read();
    }
}
