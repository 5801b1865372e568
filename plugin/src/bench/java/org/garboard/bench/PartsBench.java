package org.garboard.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.fairing.FairingBlock;
import org.garboard.cutout.fairing.FairingCut;
import org.garboard.cutout.fairing.FairingWish;
import org.garboard.cutout.flush.FlushCut;
import org.garboard.cutout.flush.FlushCutout;
import org.garboard.cutout.inhull.BathCut;
import org.garboard.cutout.inhull.BathWish;
import org.garboard.cutout.inhull.HullBath;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.PocketOutcome;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.PocketLayup;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.hull.Hull;
import org.garboard.skin.Layup;
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

/** All solids and templates of a through-hull on outboard-39: the first call in a JVM started as the launcher does. */
@State(Scope.Thread)
@Fork(value = 3, jvmArgsAppend = {"-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PartsBench {
    private static final double X = 7.5;
    private static final double Y = 0.5;

    @Param({"1", "0.1", "0.01"})
    private double chordMm;

    private Hull hull;
    private Transducer body;
    private ThroughHullWish wish;

    @Setup
    public void setUp() {
        hull = Hull.faired(DemoHull.table("outboard-39"));
        body = new Transducer("body", 0.096, 0.076, 0.028, 0.020, 0.020, Angle.ofDegrees(20));
        wish = new ThroughHullWish(Optional.of(new Layup.Whole(0.011)), ThroughHullWish.GAP, ThroughHullWish.OVERLAP,
                ThroughHullWish.BLOCK, OptionalDouble.empty(), chordMm / 1000);
    }

    @Benchmark
    public FairingBlock firstFairing() throws CannotBeBuilt {
        return FairingCut.cut(hull, body, FairingWish.of(wish), X, Y);
    }

    @Benchmark
    public HullBath firstBath() throws CannotBeBuilt {
        return BathCut.cut(hull, body, new BathWish(wish.skin(), BathWish.WALL, Angle.ofDegrees(BathWish.HEEL_DEG), wish.chord()), X, Y);
    }

    @Benchmark
    public FlushCutout firstFlush() throws CannotBeBuilt {
        return FlushCut.cut(hull, body, wish, X, Y);
    }

    /** A pocket with ramps: its room, body, former, laminate, lines and sections. */
    @Benchmark
    public PocketOutcome firstPocket() {
        PocketMake make = PocketMake.USUAL.within(chordMm / 1000)
                .with(new PocketLayup(0.0005, List.of(new PocketLayup.Layer("glass", 0.004)), PocketLayup.SCARF, PocketLayup.TRAY_GAP));
        return KeelPocketCut.cut(hull, new Transducer("body", 0.3, 0.15, 0.042, 0.03, 0.032, Angle.ofDegrees(0)),
                new PocketWish(OptionalDouble.empty(), 0.003, 12, make), 8.15);
    }
}
