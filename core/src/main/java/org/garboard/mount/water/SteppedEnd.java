package org.garboard.mount.water;

import java.util.List;
import java.util.Optional;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.StagnationLine;
import org.garboard.flow.steps.AirBehind;
import org.garboard.hull.Hull;
import org.garboard.hull.Step;

/**
 * On a bottom with steps: ahead of the first the water runs from the stagnation line; behind each the bottom is taken to be dry to
 * a beam abaft of where the water comes back, all of it where that is not known; from there on it runs anew.
 */
final class SteppedEnd implements EndOfBand {
    private final Hull hull;
    private final String name;
    private final Attitude.Stepped stepped;
    private final PlaningEnd forward;
    private final String[] behind;
    private final String unknown;

    SteppedEnd(Hull hull, String name, Attitude.Stepped stepped) {
        this.hull = hull;
        this.name = name;
        this.stepped = stepped;
        this.forward = stepped.forward().map(planes -> new PlaningEnd(name, planes)).orElse(null);
        this.unknown = forward != null ? "" : "Not worked out, " + name + ": " + String.join("; ", stepped.doubts()) + ".";
        this.behind = stepped.bottom().air().stream().map(air -> "Behind step \"" + air.step() + "\" lies air, " + name + ": " + air.note() + ".")
            .toArray(String[]::new);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public double trim() {
        return stepped.trim().radians();
    }

    /** Abaft of the steps too: no method tells another. */
    @Override
    public double outer() {
        return forward == null ? stepped.speed() : forward.outer();
    }

    @Override
    public double run(double x, double y) {
        int step = stepAhead(x, y);
        if (step < 0) {
            return forward == null ? Double.NaN : forward.run(x, y);
        }
        AirBehind air = stepped.bottom().air().get(step);
        if (air.centreline().isEmpty() || air.quarterBeam().isEmpty() || air.region().contains(x, Math.abs(y))) {
            return Double.NEGATIVE_INFINITY;
        }
        Step edge = hull.steps().get(step);
        double share = Math.min(1, Math.abs(y) / (hull.bottomEdge().y(edge.face().least()) / 2));
        return x - edge.x(y) - (1 - share) * air.centreline().get() - share * air.quarterBeam().get();
    }

    /** The last step that a place lies abaft of; -1 ahead of all. */
    private int stepAhead(double x, double y) {
        List<Step> steps = hull.steps();
        int ahead = -1;
        while (ahead + 1 < steps.size() && x > steps.get(ahead + 1).x(y)) {
            ahead++;
        }
        return ahead;
    }

    @Override
    public Optional<StagnationLine> line() {
        return Optional.ofNullable(forward).flatMap(PlaningEnd::line);
    }

    @Override
    public double depth(double x, double z) {
        return forward == null ? Double.NaN : forward.depth(x, z);
    }

    @Override
    public boolean floats() {
        return false;
    }

    @Override
    public String reason(double x, double y) {
        int step = stepAhead(x, y);
        return step < 0 ? unknown : Double.isInfinite(run(x, y)) ? behind[step] : "";
    }
}
