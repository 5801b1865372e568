package org.garboard.siting;

import org.garboard.geometry.Quad;
import org.garboard.mount.Footprint;

/** The bed of a body that hangs behind the transom: the lower edge of the transom there, and the rooms along it. */
final class TransomBed implements MeasuredBed {
    private final Ground ground;
    private final Footprint footprint;
    private final double edge;
    private final double[] plan = new double[2 * Quad.CORNERS];

    private double y;
    private double inner;
    private double outer;
    private double highest;
    private final Obstacles.Nearest nearest;

    TransomBed(Ground ground, Footprint footprint) {
        this.ground = ground;
        this.nearest = ground.obstacles().nearest();
        this.footprint = footprint;
        this.edge = edge(ground.lines());
    }

    /** x of the transom's lower edge. */
    static double edge(BottomLines lines) {
        return lines.afterEnd();
    }

    /** x is taken to be that of the transom's edge. */
    @Override
    public void moveTo(double x, double starboardY) {
        y = starboardY;
    }

    @Override
    public boolean lay() {
        inner = y - footprint.width() / 2;
        outer = y + footprint.width() / 2;
        double low = ground.skin().applyAsDouble(edge, Math.max(0, inner));
        double high = ground.skin().applyAsDouble(edge, outer);
        if (Double.isNaN(low) || Double.isNaN(high)) {
            return false;
        }
        highest = Math.max(low, high);
        for (int corner = 0; corner < Quad.CORNERS; corner++) {
            plan[2 * corner] = edge + (corner == 0 || corner == 3 ? -1 : 1) * footprint.length() / 2;
            plan[2 * corner + 1] = corner < 2 ? inner : outer;
        }
        return true;
    }

    @Override
    public Ground ground() {
        return ground;
    }

    @Override
    public Obstacles.Nearest nearest() {
        return nearest;
    }

    @Override
    public double[] plan() {
        return plan;
    }

    @Override
    public double x() {
        return edge;
    }

    @Override
    public double y() {
        return ground.signed(y);
    }

    /** It does not lie on the skin. */
    @Override
    public double gap() {
        return Double.NaN;
    }

    @Override
    public double deadrise() {
        return Math.atan2(ground.skin().applyAsDouble(edge, outer) - ground.skin().applyAsDouble(edge, Math.max(0, inner)), outer - Math.max(0, inner));
    }

    /** The bracket sets it level. */
    @Override
    public double slope() {
        return 0;
    }

    @Override
    public double roomToKeel() {
        return inner - ground.lines().keel().y(edge);
    }

    @Override
    public double roomToBottomEdge() {
        return ground.lines().edge().y(edge) - outer;
    }

    @Override
    public double roomToKnuckle() {
        double least = Double.POSITIVE_INFINITY;
        for (LineTrace knuckle : ground.lines().knuckles()) {
            double at = knuckle.y(edge);
            least = Math.min(least, at < inner ? inner - at : at > outer ? at - outer : -Math.min(at - inner, outer - at));
        }
        return least;
    }

    /** It hangs on one of them. */
    @Override
    public double roomToEnds() {
        return Double.NaN;
    }

    @Override
    public double highest() {
        return highest;
    }
}
