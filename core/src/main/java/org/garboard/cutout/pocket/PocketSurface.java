package org.garboard.cutout.pocket;

import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;
import org.garboard.solid.Parting;

/**
 * The finished face of a pocket, or a face so far behind it in its laminate, as a net: rays round the floor's outline,
 * rings from it over wall, edge and blend to the skin. Rings that have no width on a ray fall together there.
 */
final class PocketSurface {
    /** A blend shorter than this is left out [m]; our choice, the width of a pencil line. */
    private static final double SHORTEST = 3e-4;
    private static final double CLOSE = 1e-9;
    /** Twice a triangle's area in plan that is rounding [m2]. */
    private static final double FOLD = 1e-12;
    private static final int TRIED = 24;
    /** Our choice: little enough that air runs out over it. */
    private static final double LEFT = 0.1;
    /** Over which the skin's slope along a ray is read [m]. */
    private static final double REACH = 1e-4;

    private final PocketForm form;
    private final WallProfile profile;
    private final Rays rays;
    private final double[] shares;
    private final int blends;
    private final int rings;
    private final boolean bent;
    private final double[] mouth;
    private final double[] slope;
    private final double[] lengthU;
    private final double[] lengthV;
    private final double[] spot = new double[3];
    private double[] finished = new double[0];

    PocketSurface(PocketForm form) throws CannotBeBuilt {
        this.form = form;
        this.profile = new WallProfile(form.walls(), form.depth(), form.face(), form.thickness(), form.chord());
        double highest = highest();
        double ratio = Math.max(form.endRatio(), form.sideRatio());
        double widest = form.floor().radius() + form.walls().run(form.depth() - form.face()) + ratio * highest;
        int corner = (int) Math.ceil(Math.PI / 4 / Math.acos(Math.max(0, 1 - form.chord() / widest)));
        this.shares = ratio > 0 ? BlendShares.of(highest, form.chord()) : new double[1];
        this.blends = shares.length - 1;
        this.rays = new Rays(form.floor(), Math.max(3, corner), along(ratio), form.creases());
        this.rings = profile.points() + blends;
        this.bent = form.creases().stream().anyMatch(line -> turns(line, widest));
        this.mouth = new double[rays.count()];
        this.slope = new double[rays.count()];
        this.lengthU = new double[rays.count()];
        this.lengthV = new double[rays.count()];
        for (int ray = 0; ray < rays.count(); ray++) {
            settle(ray);
        }
    }

    /** Whether an edge of the skin is not straight fore and aft in plan. */
    private boolean turns(Parting.Line line, double beyond) {
        double reach = form.floor().length() / 2 + beyond;
        double first = line.v(-reach);
        for (int i = -7; i <= 8; i++) {
            if (Math.abs(line.v(reach * i / 8) - first) > CLOSE) {
                return true;
            }
        }
        return false;
    }

    /** Greatest height of the face over the skin round the floor [m], 0 where the skin is higher everywhere. */
    private double highest() throws CannotBeBuilt {
        double most = 0;
        for (int i = 0; i <= 8; i++) {
            for (int k = 0; k <= 8; k++) {
                double skin = form.frame().outside(form.floor().length() * (i / 8.0 - 0.5), form.floor().width() * (k / 8.0 - 0.5));
                if (skin != skin) {
                    throw offSkin();
                }
                most = Math.max(most, form.face() - skin);
            }
        }
        return most;
    }

    private static CannotBeBuilt offSkin() {
        return new CannotBeBuilt("the pocket runs off the skin", "a smaller pocket, or a site farther inside the bottom");
    }

    /**
     * Step of rays along straight sides: a blend's ends follow the skin's bend many times enlarged, and where the height
     * changes along a side its facets are warped.
     */
    private double along(double ratio) {
        double side = form.frame().outside(0, form.floor().width() / 2) - form.frame().outside(0, 0);
        double warp = Math.abs(side) / (form.floor().width() / 2);
        double bent = form.step() / Math.sqrt(Math.max(1, ratio));
        return blends == 0 || warp < 1e-6 ? bent : Math.min(bent, 4 * form.chord() / (BlendShares.largestFall(shares) * warp));
    }

    /** Finds where wall and surroundings meet on a ray, and how far these reach. */
    private void settle(int ray) throws CannotBeBuilt {
        meet(ray, form.endRatio() > 0);
        double over = form.endRatio() > 0 ? mouth[ray] - form.frame().outside(mouthU(ray), mouthV(ray)) : 0;
        double u = over * form.endRatio() * rays.alongU(ray);
        double v = over * form.sideRatio() * rays.alongV(ray);
        double share = over > 0 ? room(ray, u, v) : 0;
        if (share * Math.hypot(u, v) < SHORTEST) {
            if (over > 0) {
                meet(ray, false);
            }
            return;
        }
        lengthU[ray] = share * u;
        lengthV[ray] = share * v;
    }

    /** Faces nearer than this [m] fall together in files of single precision, at the height of the mouth. */
    private double apart(int ray) {
        double z = form.frame().toHull(mouthU(ray), mouthV(ray), mouth[ray]).getZ();
        return 2 * Math.ulp((float) (1000 * z)) / 1000;
    }

    private void meet(int ray, boolean blended) throws CannotBeBuilt {
        mouth[ray] = form.face();
        slope[ray] = 0;
        for (int i = 0; i < 60; i++) {
            double u = mouthU(ray);
            double v = mouthV(ray);
            double skin = form.frame().outside(u, v);
            double beyond = form.frame().outside(u + REACH * rays.alongU(ray), v + REACH * rays.alongV(ray));
            if (skin != skin || beyond != beyond) {
                throw offSkin();
            }
            double steep = (beyond - skin) / REACH;
            double height = form.face() - skin;
            double before = mouth[ray];
            mouth[ray] = blended ? skin + PocketForm.above(height) : skin;
            slope[ray] = Math.atan(blended ? steep * (1 - PocketForm.aboveSlope(height)) : steep);
            if (Math.abs(mouth[ray] - before) < CLOSE && i > 1) {
                break;
            }
        }
        if (mouth[ray] > form.depth()) {
            throw new CannotBeBuilt("the skin rises " + Lengths.mm(mouth[ray] - form.depth()) + " above the floor at the pocket's edge",
                "a depth of " + Lengths.mmUp(mouth[ray]) + " and more, or a narrower pocket");
        }
    }

    private double mouthU(int ray) {
        return rays.u(ray) + rays.alongU(ray) * profile.reach(mouth[ray], slope[ray]);
    }

    private double mouthV(int ray) {
        double v = rays.v(ray) + rays.alongV(ray) * profile.reach(mouth[ray], slope[ray]);
        return v + shift(ray, mouthU(ray));
    }

    private double shift(int ray, double u) {
        return bent && rays.isEnd(ray)
            ? rays.shift(ray, u, form.creases(), form.floor().width() / 2 - form.floor().radius()) : 0;
    }

    /** The share of a blend's length at which skin that rises has come up to the face but for a tenth; 1 where it does not. */
    private double room(int ray, double u, double v) throws CannotBeBuilt {
        double inside = 0;
        double least = LEFT * over(ray, 0, 0);
        for (int i = 1; i <= TRIED; i++) {
            double share = (double) i / TRIED;
            double over = over(ray, share * u, share * v);
            if (over != over) {
                throw offSkin();
            }
            if (over < least) {
                double low = inside;
                double high = share;
                while (high - low > 1e-9) {
                    double middle = (low + high) / 2;
                    if (over(ray, middle * u, middle * v) < least) {
                        high = middle;
                    } else {
                        low = middle;
                    }
                }
                return low;
            }
            inside = share;
        }
        return 1;
    }

    private double over(int ray, double u, double v) {
        double at = mouthU(ray) + u;
        double across = rays.v(ray) + rays.alongV(ray) * profile.reach(mouth[ray], slope[ray]) + v + shift(ray, at);
        return PocketForm.above(form.face() - form.frame().outside(at, across));
    }

    /** Greatest height of a blend to its length; 0 where there are none. */
    double steepest() {
        double most = 0;
        for (int ray = 0; ray < rays.count(); ray++) {
            double length = Math.hypot(lengthU[ray], lengthV[ray]);
            if (length > 0) {
                most = Math.max(most, (mouth[ray] - form.frame().outside(mouthU(ray), mouthV(ray))) / length);
            }
        }
        return most;
    }

    Rays rays() {
        return rays;
    }

    int rings() {
        return rings;
    }

    /** The ring at which walls end and blends begin. */
    int mouthRing() {
        return profile.points() - 1;
    }

    /**
     * The net: u, v, w of each ring of each ray, rays in turn.
     *
     * @param behind the finished face [m]
     */
    double[] net(double behind) throws CannotBeBuilt {
        if (finished.length == 0) {
            finished = finished();
        }
        return behind > 0 ? behind(finished, behind) : finished.clone();
    }

    private double[] finished() throws CannotBeBuilt {
        double[] net = new double[3 * rings * rays.count()];
        double[] wall = new double[2 * profile.points()];
        for (int ray = 0; ray < rays.count(); ray++) {
            int at = 3 * rings * ray;
            profile.trace(mouth[ray], slope[ray], 0, wall);
            for (int k = 0; k < profile.points(); k++) {
                double u = rays.u(ray) + rays.alongU(ray) * wall[2 * k];
                net[at + 3 * k] = u;
                net[at + 3 * k + 1] = rays.v(ray) + rays.alongV(ray) * wall[2 * k] + (k == mouthRing() ? shift(ray, u) : 0);
                net[at + 3 * k + 2] = wall[2 * k + 1];
            }
            for (int k = 1; k <= blends; k++) {
                blend(ray, shares[k], spot);
                System.arraycopy(spot, 0, net, at + 3 * (mouthRing() + k), 3);
            }
            end(ray, net, at);
        }
        return net;
    }

    /** Rings so near the skin that files cannot tell them from it are laid on the first of them. */
    private void end(int ray, double[] net, int at) {
        double apart = apart(ray);
        for (int k = mouthRing() + 1; k < rings; k++) {
            double skin = form.frame().outside(net[at + 3 * k], net[at + 3 * k + 1]);
            if (net[at + 3 * k + 2] - skin < apart) {
                net[at + 3 * k + 2] = skin;
                for (int beyond = k + 1; beyond < rings; beyond++) {
                    System.arraycopy(net, at + 3 * k, net, at + 3 * beyond, 3);
                }
                return;
            }
        }
    }

    /** A place of the blend on a ray at a share of the way out. */
    void blend(int ray, double share, double[] out) {
        double u = mouthU(ray) + share * lengthU[ray];
        double v = rays.v(ray) + rays.alongV(ray) * profile.reach(mouth[ray], slope[ray]) + share * lengthV[ray];
        out[0] = u;
        out[1] = v + shift(ray, u);
        out[2] = lengthU[ray] == 0 && lengthV[ray] == 0 ? mouth[ray] : form.surroundings(out[0], out[1], share);
    }

    /** Walls by their own section, blends lifted square to themselves; where the wall has grown past a ring, that is gone. */
    private double[] behind(double[] finished, double behind) throws CannotBeBuilt {
        double[] net = finished.clone();
        double[] wall = new double[2 * profile.points()];
        for (int ray = 0; ray < rays.count(); ray++) {
            int at = 3 * rings * ray;
            profile.trace(mouth[ray], slope[ray], behind, wall);
            for (int k = 0; k < profile.points(); k++) {
                double u = rays.u(ray) + rays.alongU(ray) * wall[2 * k];
                net[at + 3 * k] = u;
                net[at + 3 * k + 1] = rays.v(ray) + rays.alongV(ray) * wall[2 * k] + (k == mouthRing() ? shift(ray, u) : 0);
                net[at + 3 * k + 2] = wall[2 * k + 1];
            }
            int end = at + 3 * mouthRing();
            for (int k = mouthRing() + 1; k < rings; k++) {
                double beyond = (finished[at + 3 * k] - net[end]) * rays.alongU(ray) + (finished[at + 3 * k + 1] - net[end + 1]) * rays.alongV(ray);
                if (beyond > SHORTEST) {
                    net[at + 3 * k + 2] += behind * secant(finished, ray, k);
                } else {
                    System.arraycopy(net, end, net, at + 3 * k, 3);
                }
            }
        }
        requireUnfolded(net, behind);
        return net;
    }

    /** Behind an edge that is rounder than the laminate is thick nothing folds; else it may, where edge and blend run together. */
    private void requireUnfolded(double[] net, double behind) throws CannotBeBuilt {
        int count = rays.count();
        for (int ray = 0; ray < count; ray++) {
            int next = (ray + 1) % count;
            for (int ring = rings - 1; ring > 0; ring--) {
                int a = 3 * (rings * ray + ring);
                int b = 3 * (rings * next + ring);
                int c = b - 3;
                int d = a - 3;
                if (turn(net, a, b, c) < -FOLD || turn(net, a, c, d) < -FOLD) {
                    throw new CannotBeBuilt("laminate " + Lengths.mm(behind) + " thick folds over itself behind an edge of "
                        + Lengths.mm(form.walls().edgeRadius()) + " radius", "an edge radius of " + Lengths.mmUp(behind) + ", or none of the laminate told");
                }
            }
        }
    }

    private static double turn(double[] net, int a, int b, int c) {
        return (net[b] - net[a]) * (net[c + 1] - net[a + 1]) - (net[b + 1] - net[a + 1]) * (net[c] - net[a]);
    }

    /** How much longer a height is than the thickness square to the face. */
    private double secant(double[] net, int ray, int ring) {
        int count = rays.count();
        boolean edge = form.creases().stream().anyMatch(line -> Math.abs(line.v(net[3 * (rings * ray + ring)]) - net[3 * (rings * ray + ring) + 1]) < 1e-7);
        int before = edge ? ray : (ray + count - 1) % count;
        int after = (ray + 1) % count;
        int inner = Math.max(mouthRing(), ring - 1);
        int outer = Math.min(rings - 1, ring + 1);
        double[] a = new double[3];
        double[] b = new double[3];
        for (int k = 0; k < 3; k++) {
            a[k] = net[3 * (rings * ray + outer) + k] - net[3 * (rings * ray + inner) + k];
            b[k] = net[3 * (rings * after + ring) + k] - net[3 * (rings * before + ring) + k];
        }
        double x = a[1] * b[2] - a[2] * b[1];
        double y = a[2] * b[0] - a[0] * b[2];
        double z = a[0] * b[1] - a[1] * b[0];
        return Math.abs(z) < 1e-12 ? 1 : Math.sqrt(x * x + y * y + z * z) / Math.abs(z);
    }
}
