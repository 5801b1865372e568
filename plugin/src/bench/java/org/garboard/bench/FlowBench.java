package org.garboard.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.garboard.flow.doublebody.DoubleBody;
import org.garboard.flow.doublebody.HullFlow;
import org.garboard.flow.doublebody.MeshWish;
import org.garboard.flow.doublebody.Stern;
import org.garboard.flow.streams.HullStreams;
import org.garboard.flow.streams.Traced;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;
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
 * The double body of outboard-39 afloat, and streamlines over it: the first call in a JVM started as the launcher
 * does.
 */
@State(Scope.Thread)
@Fork(value = 5, jvmArgsAppend = {"-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class FlowBench {
    private static final WaterSurface WATER = WaterSurface.level(0.6);
    private static final int LINES = 500;

    private Hull hull;

    @Setup
    public void setUp() {
        hull = Hull.faired(DemoHull.table("outboard-39"));
    }

    /** Mesh, matrix, solution and velocities with four images. */
    @Benchmark
    public DoubleBody firstDoubleBody1500() {
        return DoubleBody.past(hull, WATER, MeshWish.atMost(1500, Stern.STRAIGHT_RUN));
    }

    @Benchmark
    public DoubleBody firstDoubleBody2000() {
        return DoubleBody.past(hull, WATER, MeshWish.atMost(2000, Stern.STRAIGHT_RUN));
    }

    @Benchmark
    public DoubleBody firstDoubleBody5000() {
        return DoubleBody.past(hull, WATER, MeshWish.atMost(5000, Stern.STRAIGHT_RUN));
    }

    /** Lines through so many places, after a flow that is solved. */
    @Benchmark
    public List<Traced> first500Streamlines(Solved solved) {
        List<Traced> lines = new ArrayList<>();
        for (int i = 0; i < LINES; i++) {
            lines.add(solved.streams.through(1.5 + 10.0 * i / LINES, 0.05 + 0.9 * (i % 25) / 25));
        }
        return lines;
    }

    /** A flow that streamlines run over. */
    @State(Scope.Thread)
    public static class Solved {
        private HullStreams streams;

        @Setup
        public void setUp() {
            Hull hull = Hull.faired(DemoHull.table("outboard-39"));
            streams = new HullStreams((HullFlow) DoubleBody.past(hull, WATER, MeshWish.atMost(1500, Stern.STRAIGHT_RUN)));
        }
    }
}
