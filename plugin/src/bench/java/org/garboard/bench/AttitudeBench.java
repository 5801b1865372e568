package org.garboard.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.Load;
import org.garboard.flow.attitude.Loaded;
import org.garboard.flow.attitude.RunningHull;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.units.Angle;
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

/** How outboard-39 runs at ten planing speeds, warm; and how she is floated. */
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class AttitudeBench {
    private static final double KNOT = 1852 / 3600.0;
    private static final Load LOAD = new Load(7000, 7.6, 0.85, -0.18, Angle.ofDegrees(0));

    private final List<Double> speeds = new ArrayList<>();
    private Hull hull;
    private RunningHull boat;

    @Setup
    public void setUp() {
        hull = Hull.faired(DemoHull.table("outboard-39"));
        boat = (RunningHull) RunningHull.of(hull, Optional.empty(), LOAD, Water.sea(15));
        for (int i = 0; i < 10; i++) {
            speeds.add((24 + 2 * i) * KNOT);
        }
    }

    /** Trim, wetted lengths, drag, stagnation line and spray at ten speeds. */
    @Benchmark
    public List<Attitude> tenSpeeds() {
        return boat.at(speeds);
    }

    /** Draught and trim at rest. */
    @Benchmark
    public Loaded floated() {
        return RunningHull.of(hull, Optional.empty(), LOAD, Water.sea(15));
    }
}
