package org.garboard.siting;

import java.util.Arrays;
import org.garboard.geometry.Quad;

/**
 * The bed of a footprint beside the keel: the skin under it against its best plane, and the rooms
 * around it.
 *
 * <p>The footprint lies in the plane it is compared with: its long side parallel to the keel line in
 * plan, the other square to it in the plane. Each point of it is carried to the skin square to the
 * plane. The best plane is the least-squares plane of those points; plane and footprint are turned
 * together until they agree.
 */
final class SkinBed implements MeasuredBed {
    private final Ground ground;
    private final Lattice lattice;
    private final int fits;
    private final double[] off;
    private final double[] px;
    private final double[] py;
    private final double[] pz;

    private double centreX;
    private double centreY;
    private double slopeAft;
    private double slopeOut;
    private double alongX;
    private double acrossX;
    private double acrossY;
    private double normalX;
    private double normalY;
    private double normalZ;
    private double gap;
    private double highest;
    private boolean isPlanned;
    /** The rectangle round the footprint in plan, x and y of each corner. */
    private final double[] plan = new double[2 * Quad.CORNERS];
    private final Obstacles.Nearest nearest;

    private SkinBed(Ground ground, Lattice lattice, int fits) {
        this.ground = ground;
        this.nearest = ground.obstacles().nearest();
        this.lattice = lattice;
        this.fits = fits;
        this.off = new double[lattice.size()];
        this.px = new double[lattice.size()];
        this.py = new double[lattice.size()];
        this.pz = new double[lattice.size()];
    }

    /** For the search: few points, one fit. */
    static SkinBed coarse(Ground ground, Lattice lattice) {
        return new SkinBed(ground, lattice, 1);
    }

    /** For one place: the plane is fitted again until footprint and plane agree. */
    static SkinBed fine(Ground ground, Lattice lattice) {
        return new SkinBed(ground, lattice, 3);
    }

    @Override
    public void moveTo(double x, double y) {
        centreX = x;
        centreY = y;
    }

    @Override
    public boolean lay() {
        if (!layOnFourPoints()) {
            return false;
        }
        double centreZ = ground.skin().applyAsDouble(centreX, centreY);
        Arrays.fill(off, 0);
        for (int fit = 0; fit < fits; fit++) {
            if (!carryToSkin(centreZ)) {
                return false;
            }
            fitPlane();
        }
        if (fits == 1) {
            slideToPlane();
        }
        isPlanned = false;
        takeHighest();
        return true;
    }

    /** A first plane from the middles of the four sides; again, for one place, on the footprint so turned. */
    private boolean layOnFourPoints() {
        turnTo(0, 0);
        for (int turn = 0; turn < Math.min(fits, 2); turn++) {
            double dx = alongX * lattice.halfLength();
            double wx = acrossX * lattice.halfWidth();
            double wy = acrossY * lattice.halfWidth();
            double fore = ground.skin().applyAsDouble(centreX - dx, centreY);
            double aft = ground.skin().applyAsDouble(centreX + dx, centreY);
            double in = ground.skin().applyAsDouble(centreX - wx, centreY - wy);
            double out = ground.skin().applyAsDouble(centreX + wx, centreY + wy);
            double p = (aft - fore) / (2 * dx);
            double q = ((out - in) / 2 - p * wx) / wy;
            if (Double.isNaN(p) || Double.isNaN(q)) {
                return false;
            }
            turnTo(p, q);
        }
        return true;
    }

    /** Lays the footprint in the plane z = p x + q y. */
    private void turnTo(double p, double q) {
        slopeAft = p;
        slopeOut = q;
        double along = Math.sqrt(1 + p * p);
        double square = Math.sqrt(1 + p * p + q * q);
        alongX = 1 / along;
        acrossX = -p * q / (along * square);
        acrossY = along / square;
        normalX = -p / square;
        normalY = -q / square;
        normalZ = 1 / square;
    }

    /** Carries the points of the footprint square to its plane to the skin; {@code off} becomes how far. */
    private boolean carryToSkin(double centreZ) {
        for (int k = 0; k < off.length; k++) {
            double s = lattice.aft(k);
            double r = lattice.outboard(k);
            double x = centreX + s * alongX + r * acrossX + off[k] * normalX;
            double y = centreY + r * acrossY + off[k] * normalY;
            double z = ground.skin().applyAsDouble(x, y);
            if (Double.isNaN(z)) {
                return false;
            }
            px[k] = x;
            py[k] = y;
            pz[k] = z;
            off[k] = (x - centreX) * normalX + (y - centreY) * normalY + (z - centreZ) * normalZ;
        }
        return true;
    }

    /** Turns the plane by what is left of it in {@code off}, which becomes the distance from the best plane. */
    private void fitPlane() {
        double aftMoment = 0;
        double outMoment = 0;
        for (int k = 0; k < off.length; k++) {
            aftMoment += lattice.aft(k) * off[k];
            outMoment += lattice.outboard(k) * off[k];
        }
        double tiltAft = aftMoment / lattice.aftSquares();
        double tiltOut = outMoment / lattice.outboardSquares();
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < off.length; k++) {
            double rest = off[k] - tiltAft * lattice.aft(k) - tiltOut * lattice.outboard(k);
            off[k] = rest;
            least = rest < least ? rest : least;
            most = rest > most ? rest : most;
        }
        gap = most - least;
        double alongZ = slopeAft * alongX;
        double acrossZ = slopeAft * acrossX + slopeOut * acrossY;
        double nx = normalX - tiltAft * alongX - tiltOut * acrossX;
        double ny = normalY - tiltOut * acrossY;
        double nz = normalZ - tiltAft * alongZ - tiltOut * acrossZ;
        turnTo(-nx / nz, -ny / nz);
    }

    /** A single fit has carried the points plumb: slides them along the plane to where square would have put them. */
    private void slideToPlane() {
        for (int k = 0; k < off.length; k++) {
            double dx = off[k] * normalX;
            double dy = off[k] * normalY;
            px[k] += dx;
            py[k] += dy;
            pz[k] += slopeAft * dx + slopeOut * dy;
        }
    }

    private void takeHighest() {
        highest = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < off.length; k++) {
            highest = pz[k] > highest ? pz[k] : highest;
        }
    }

    /** Once for each place, when it is asked for: most places are settled before. */
    @Override
    public double[] plan() {
        for (int corner = 0; corner < Quad.CORNERS && !isPlanned; corner++) {
            double s = corner == 0 || corner == 3 ? -lattice.halfLength() : lattice.halfLength();
            double r = corner < 2 ? -lattice.halfWidth() : lattice.halfWidth();
            plan[2 * corner] = centreX + s * alongX + r * acrossX;
            plan[2 * corner + 1] = centreY + r * acrossY;
        }
        isPlanned = true;
        return plan;
    }

    /** Least distance of the long edges from a line; negative where the line crosses the footprint. */
    private double room(LineTrace line) {
        double least = Double.POSITIVE_INFINITY;
        for (int row = 0; row < lattice.rows(); row += lattice.roomStride()) {
            int in = row * lattice.columns();
            int out = in + lattice.columns() - 1;
            double lineAtIn = line.y(px[in]);
            double lineAtOut = line.y(px[out]);
            double room;
            if (lineAtOut >= py[out]) {
                room = line.distance(px[out], py[out], pz[out]);
            } else if (lineAtIn <= py[in]) {
                room = line.distance(px[in], py[in], pz[in]);
            } else {
                room = -Math.min(Math.max(0, lineAtIn - py[in]), Math.max(0, py[out] - lineAtOut));
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
    public double x() {
        return centreX;
    }

    @Override
    public double y() {
        return ground.signed(centreY);
    }

    @Override
    public double gap() {
        return gap;
    }

    @Override
    public double deadrise() {
        return Math.atan(slopeOut);
    }

    @Override
    public double slope() {
        return Math.atan(slopeAft);
    }

    @Override
    public double roomToKeel() {
        return room(ground.lines().keel());
    }

    @Override
    public double roomToBottomEdge() {
        return room(ground.lines().edge());
    }

    @Override
    public double roomToKnuckle() {
        double least = Double.POSITIVE_INFINITY;
        for (LineTrace knuckle : ground.lines().knuckles()) {
            least = Math.min(least, room(knuckle));
        }
        return least;
    }

    @Override
    public double roomToEnds() {
        double foremost = Double.POSITIVE_INFINITY;
        double aftmost = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < off.length; k++) {
            foremost = px[k] < foremost ? px[k] : foremost;
            aftmost = px[k] > aftmost ? px[k] : aftmost;
        }
        return Math.min(foremost - ground.lines().forwardEnd(), ground.lines().afterEnd() - aftmost);
    }

    @Override
    public double roomToStep() {
        double least = Double.POSITIVE_INFINITY;
        BottomLines lines = ground.lines();
        int next = lines.nextStep(centreX, centreY);
        for (int k = 0; k < off.length && !lines.steps().isEmpty(); k++) {
            least = Math.min(least, lines.toStep(next, px[k], py[k]));
        }
        return least;
    }

    @Override
    public double highest() {
        return highest;
    }
}
