package org.garboard.bench;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.garboard.hull.Hull;
import org.garboard.hull.HullCurves;
import org.garboard.hull.HullLine;
import org.garboard.hull.Panel;
import org.garboard.offsets.OffsetTable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Point, normal and both curvatures at arbitrary places of outboard-39, all panels in random order. */
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class HullBench {
    private static final int PLACES = 1 << 16;

    private OffsetTable table;
    private Hull hull;
    private Panel[] panels;
    private int[] panel;
    private double[] x;
    private double[] v;
    private double[] y;
    private final double[] out = new double[Panel.POINT_SIZE];

    @Setup
    public void setUp() {
        table = DemoHull.table("outboard-39");
        hull = Hull.through(table);
        panels = hull.panels().toArray(new Panel[0]);
        panel = new int[PLACES];
        x = new double[PLACES];
        v = new double[PLACES];
        y = new double[PLACES];
        SplittableRandom random = new SplittableRandom(39);
        List<HullLine> lines = hull.lines();
        for (int i = 0; i < PLACES; i++) {
            panel[i] = random.nextInt(panels.length);
            x[i] = hull.forwardEnd() + random.nextDouble() * (hull.afterEnd() - hull.forwardEnd());
            v[i] = random.nextDouble();
            double inner = lines.get(panel[i]).y(x[i]);
            y[i] = inner + random.nextDouble() * (lines.get(panel[i] + 1).y(x[i]) - inner);
        }
    }

    @Benchmark
    @OperationsPerInvocation(PLACES)
    public double atSurfaceParameters() {
        double sum = 0;
        for (int i = 0; i < PLACES; i++) {
            panels[panel[i]].evaluate(x[i], v[i], out, 0);
            sum += out[Panel.Z] + out[Panel.NZ] + out[Panel.K1] + out[Panel.K2];
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(PLACES)
    public double atPlaceInPlan() {
        double sum = 0;
        for (int i = 0; i < PLACES; i++) {
            hull.evaluate(x[i], y[i], out, 0);
            sum += out[Panel.Z] + out[Panel.NZ] + out[Panel.K1] + out[Panel.K2];
        }
        return sum;
    }

    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public Hull fitThroughPoints() {
        return Hull.through(table);
    }

    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public Hull fitWithinRounding() {
        return Hull.faired(table);
    }

    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public int hundredSectionsAndTwentyButtocks() {
        int points = 0;
        for (int i = 0; i < 100; i++) {
            double at = hull.forwardEnd() + (hull.afterEnd() - hull.forwardEnd()) * (i + 0.5) / 100;
            points += new HullCurves(hull).section(at, 1e-5).size();
        }
        for (int i = 0; i < 20; i++) {
            points += new HullCurves(hull).buttock(1.6 * (i + 0.5) / 20, 1e-5).size();
        }
        return points;
    }
}
