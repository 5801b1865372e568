package org.garboard.flow.attitude;

import java.util.Optional;
import org.garboard.flow.planing.Loading;
import org.garboard.flow.planing.PlaningRange;
import org.garboard.flow.planing.Prism;
import org.garboard.flow.planing.PrismBalance;
import org.garboard.flow.planing.PrismRun;
import org.garboard.flow.planing.Stream;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.offsets.LineKind;
import org.garboard.units.Angle;

/**
 * Brings the prism and a real bottom to agreement: beam and chord deadrise are averaged, and the keel's run taken,
 * over the mean wetted length forward of the after end of the bottom (the paper's inputs are labelled average), until
 * they stand still; then the level water, at the prism's draught of the keel there, is laid on the true surface.
 */
public final class PlaningHull {
    private static final int LOOKS = 200;
    private static final int MOST_TURNS = 60;
    private static final double STILL = 1e-7;
    /** The prism's mean wetted length and that of the true bottom may differ by so much: our choice. */
    private static final double UNLIKE = 0.2;

    private final Hull hull;
    private final double end;

    public PlaningHull(Hull hull) {
        this.hull = hull;
        this.end = hull.bottomEnd();
    }

    /** Balanced under a load whose lengths count from the bottom's after end, {@link Hull#bottomEnd()}. */
    public Planing balanced(Stream stream, Loading loading) {
        if (hull.bottomEdge().kind() != LineKind.CHINE) {
            return new Planing.NotKnown("no chine: the planing method is for bottoms that end at chines");
        }
        if (!hull.steps().isEmpty()) {
            return new Planing.NotKnown("a stepped bottom, which the planing method does not cover");
        }
        if (hull.skinLine() != 0) {
            return new Planing.NotKnown("a keel below the bottom, which the planing method does not cover");
        }
        double length = hull.bottomEdge().y(end) * 2;
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            if (end - length < hull.forwardEnd()) {
                return new Planing.NotKnown("the bottom would be wet to the forward end of the table");
            }
            Prism prism = mean(length);
            Optional<String> outside = PlaningRange.outside(prism, stream);
            if (outside.isPresent()) {
                return new Planing.NotKnown(outside.get());
            }
            PrismBalance balance = PrismBalance.of(prism, stream, loading);
            PrismRun run = balance.at(balance.trim());
            double next = run.beams() * prism.beam();
            if (Math.abs(next - length) <= STILL * length) {
                return laid(run, length);
            }
            length = next;
        }
        return new Planing.NotKnown("no mean wetted length was found with which beam and deadrise agree");
    }

    private Planing laid(PrismRun run, double length) {
        Optional<String> outside = PlaningRange.outside(run);
        if (outside.isPresent()) {
            return new Planing.NotKnown(outside.get());
        }
        double rise = Math.atan2(hull.keel().z(end - length) - hull.keel().z(end), length);
        double trim = run.trim().radians() - rise;
        WaterSurface water = new WaterSurface(hull.keel().z(end) + run.draught() / Math.cos(trim), end, Angle.ofRadians(trim));
        Optional<StagnationLine> line = new LaidLine(hull, water).line(end);
        if (line.isEmpty()) {
            return new Planing.NotKnown("the water does not leave keel and chine within the hull");
        }
        double wet = end - 0.5 * (line.get().atKeel() + line.get().atChine());
        return Math.abs(wet - length) > UNLIKE * length
            ? new Planing.NotKnown("the bottom is too unlike a prism: its mean wetted length differs by more than a fifth")
            : new Planing.Running(Angle.ofRadians(trim), run, line.get());
    }

    private Prism mean(double length) {
        double beam = 0;
        double deadrise = 0;
        for (int i = 0; i < LOOKS; i++) {
            double x = end - length * (i + 0.5) / LOOKS;
            double y = hull.bottomEdge().y(x);
            beam += 2 * y / LOOKS;
            deadrise += Math.atan2(hull.bottomEdge().z(x) - hull.keel().z(x), y) / LOOKS;
        }
        return new Prism(beam, Angle.ofRadians(Math.max(0, deadrise)));
    }
}
