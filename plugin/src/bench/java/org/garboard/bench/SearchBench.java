package org.garboard.bench;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Transducer;
import org.garboard.hull.Hull;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.Installation;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.PocketWish;
import org.garboard.siting.Mark;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Siting;
import org.garboard.siting.SitingTask;
import org.garboard.units.Angle;
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

/** The whole bottom of outboard-39 on the 10 mm grid, both mounts: the first call in a JVM started as the launcher does. */
@State(Scope.Thread)
@Fork(value = 5, jvmArgsAppend = {"-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SearchBench {
    @Param({"1", "2"})
    private int threads;

    private Hull hull;
    private SitingTask task;

    @Setup
    public void setUp() {
        hull = Hull.faired(DemoHull.table("outboard-39"));
        Transducer body = new Transducer("body", 0.3, 0.15, 0.042, 0.03, 0.032, Angle.ofDegrees(20));
        task = new SitingTask(0.58, new Installation(body, new PocketWish(OptionalDouble.empty(), 0.0025, 8)),
                List.of(new FlushThroughHull(), new KeelPocket()), Mark.FIVE_MILLIMETRES, BottomFeatures.NOT_LISTED);
    }

    @Benchmark
    public List<MountSiting> firstSearch() {
        return Siting.search(hull, task, threads);
    }
}
