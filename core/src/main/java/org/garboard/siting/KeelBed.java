package org.garboard.siting;

import org.garboard.geometry.Quad;
import org.garboard.geometry.StraightFit;
import org.garboard.mount.Footprint;
import org.garboard.mount.Installation;
import org.garboard.mount.KeelSeat;
import org.garboard.mount.Mount;

/**
 * The bed of a pocket: on the keel line the V across it, beside it the skin there, the line fore and aft along it, and the rooms.
 */
final class KeelBed implements MeasuredBed {
    private static final int COARSE = 9;
    private static final int FINE = 41;

    private final Ground ground;
    private final Mount mount;
    private final Installation installation;
    private final Footprint footprint;
    private final int samples;

    private KeelSeat seat;
    /** Of its middle, as if to starboard [m]: a job tells how far aside. */
    private final double aside;
    private double at;
    private double keelGap;
    private double toEdge;
    private double toKeel;
    private double toChine;
    private double toEnds;
    private double toStep;
    /** Pocket and ramps in plan, x and y of each corner. */
    private final double[] plan = new double[2 * Quad.CORNERS];
    private final Obstacles.Nearest nearest;

    private KeelBed(Ground ground, Mount mount, Installation installation, int samples) {
        this.ground = ground;
        this.nearest = ground.obstacles().nearest();
        this.mount = mount;
        this.installation = installation;
        this.footprint = mount.footprint(installation);
        this.samples = samples;
        this.aside = Math.abs(installation.pocket().aside());
    }

    static KeelBed coarse(Ground ground, Mount mount, Installation installation) {
        return new KeelBed(ground, mount, installation, COARSE);
    }

    static KeelBed fine(Ground ground, Mount mount, Installation installation) {
        return new KeelBed(ground, mount, installation, FINE);
    }

    /** y is taken to be what the job tells: the pocket has no other. */
    @Override
    public void moveTo(double x, double y) {
        at = x;
    }

    @Override
    public boolean lay() {
        double x = at;
        seat = KeelSeat.under(ground.skin(), x, aside, installation.pocket().make().floor().lies(), footprint, samples);
        if (!seat.onSkin()) {
            return false;
        }
        double cosine = 1 / Math.sqrt(1 + seat.slope() * seat.slope());
        double half = footprint.length() / 2 * cosine;
        double reach = half + mount.ramp(installation, seat.rise()) * cosine;
        StraightFit run = StraightFit.over(along -> ground.skin().applyAsDouble(along, aside), x, reach, samples);
        if (Double.isNaN(run.gap())) {
            return false;
        }
        keelGap = run.gap();
        BottomLines lines = ground.lines();
        toEnds = Math.min(x - reach - lines.forwardEnd(), lines.afterEnd() - x - reach);
        toStep = Double.POSITIVE_INFINITY;
        int next = lines.nextStep(x, aside);
        for (int k = 0; k < samples; k++) {
            double y = Math.abs(aside + footprint.width() * (k / (samples - 1.0) - 0.5));
            toStep = Math.min(toStep, Math.min(lines.toStep(next, x - reach, y), lines.toStep(next, x + reach, y)));
        }
        toEdge = room(lines.edge(), x, half);
        toKeel = aside == 0 ? Double.NaN : room(lines.keel(), x, half);
        toChine = Double.POSITIVE_INFINITY;
        for (LineTrace chine : aside == 0 ? lines.chines() : lines.knuckles()) {
            toChine = Math.min(toChine, room(chine, x, half));
        }
        takePlan(x, reach);
        return true;
    }

    private void takePlan(double x, double reach) {
        for (int corner = 0; corner < Quad.CORNERS; corner++) {
            plan[2 * corner] = corner == 0 || corner == 3 ? x - reach : x + reach;
            plan[2 * corner + 1] = aside + (corner < 2 ? -footprint.width() / 2 : footprint.width() / 2);
        }
    }

    /** Least distance of the long edges from a line; negative where the line crosses the footprint. */
    private double room(LineTrace line, double x, double half) {
        double in = aside - footprint.width() / 2;
        double out = aside + footprint.width() / 2;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < samples; k++) {
            double along = x + half * (2.0 * k / (samples - 1) - 1);
            double lineY = line.y(along);
            double room;
            if (lineY >= out) {
                room = line.distance(along, out, ground.skin().applyAsDouble(along, out));
            } else if (lineY <= in) {
                room = line.distance(along, in, ground.skin().applyAsDouble(along, in));
            } else {
                room = -Math.min(lineY - in, out - lineY);
            }
            least = Math.min(least, room);
        }
        return least;
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
        return at;
    }

    @Override
    public double y() {
        return ground.signed(aside);
    }

    /** The body lies on its floor, not on the skin. */
    @Override
    public double gap() {
        return Double.NaN;
    }

    @Override
    public double deadrise() {
        return Math.atan(seat.athwart());
    }

    @Override
    public double slope() {
        return Math.atan(seat.slope());
    }

    /** None on the keel line. */
    @Override
    public double roomToKeel() {
        return toKeel;
    }

    @Override
    public double roomToBottomEdge() {
        return toEdge;
    }

    /** To chines inside the bottom's edge; the edge of a flat keel is cut away with a pocket athwart it. */
    @Override
    public double roomToKnuckle() {
        return toChine;
    }

    @Override
    public double roomToEnds() {
        return toEnds;
    }

    @Override
    public double roomToStep() {
        return toStep;
    }

    @Override
    public double highest() {
        return seat.highest();
    }

    @Override
    public double rise() {
        return seat.rise();
    }

    @Override
    public double keelGap() {
        return keelGap;
    }
}
