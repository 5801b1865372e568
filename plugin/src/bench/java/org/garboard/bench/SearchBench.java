package org.garboard.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.JobSource;
import org.garboard.exchange.TablePlace;
import org.garboard.hull.Hull;
import org.garboard.mount.Mount;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Siting;
import org.garboard.siting.SitingTask;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The job of outboard-39 with all five mounts at its four speeds, what is told of her and laid on her among it: the second
 * call and later ones in a JVM started as the launcher does, its heap 256 MB.
 */
@State(Scope.Thread)
@Fork(value = 3, jvmArgsAppend = {"-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx256m"})
@Warmup(iterations = 1)
@Measurement(iterations = 2)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SearchBench {
    /** Side of the grid's cells. */
    @Param({"20", "10", "5", "2.5"})
    private double stepMm;

    private Hull hull;
    private SitingTask task;

    @Setup
    public void setUp() throws InputFault {
        Path job = Path.of("src", "main", "demo", "outboard-39", "job.xml");
        JobSource source = JobSource.read(Files.exists(job) ? job : Path.of("plugin").resolve(job), TablePlace.BELOW_JOB);
        hull = source.table().hull(source.job().fit());
        task = source.job().sitingTask(hull, source.features(hull), source.running(hull)).by(Mount.all());
    }

    /** The search alone: how she runs is known. */
    @Benchmark
    public List<MountSiting> search() {
        return Siting.search(hull, task, stepMm / 1000);
    }
}
