package org.garboard.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.garboard.cli.files.JobSource;
import org.garboard.decision.Decision;
import org.garboard.drawing.sheets.DrawnSet;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetSet;
import org.garboard.exchange.TablePlace;
import org.garboard.hull.Hull;
import org.garboard.job.SitingRecord;
import org.garboard.offsets.HullOffsets;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The set of outboard-39 in all three formats with its pocket's templates, started as the launcher does. The first iteration is
 * the first set of its JVM; the last ones are warm.
 */
@State(Scope.Thread)
@Fork(value = 3, jvmArgsAppend = {"-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 0)
@Measurement(iterations = 8)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SheetsBench {
    private HullOffsets table;
    private Hull hull;
    private SitingRecord decided;

    /** Reads from the sources, so run from the top of the checkout or from {@code plugin}. */
    @Setup
    public void setUp() throws Exception {
        Path job = Path.of("src", "main", "demo", "outboard-39", "job.xml");
        Path fromTop = Path.of("plugin").resolve(job);
        JobSource source = JobSource.read(Files.exists(fromTop) ? fromTop : job, TablePlace.BELOW_JOB);
        table = source.table().table();
        hull = source.table().hull(source.job().fit());
        decided = Decision.of(hull, source.running(hull), source.jobs(), source.features(hull)).get(0);
    }

    @Benchmark
    public DrawnSet set() {
        return SheetSet.draw(decided, table, hull, new Provenance("bench", "0".repeat(64)));
    }
}
