package org.garboard.cutout.pocket;

import org.garboard.cutout.CannotBeBuilt;
import org.garboard.solid.Parting;

/**
 * The finished face of a pocket, or a face so far behind it in its laminate, as a net: rays round the floor's outline,
 * rings from it over wall, edge and blend to the skin. Rings that have no width on a ray fall together there.
 */
final class PocketSurface {
    private static final double CLOSE = 1e-9;

    private final PocketForm form;
    private final WallProfile profile;
    private final Rays rays;
    private final double[] shares;
    private final int blends;
    private final int rings;
    private final Mouths mouths;
    private final double[] finished;

    PocketSurface(PocketForm form) throws CannotBeBuilt {
        this.form = form;
        this.profile = new WallProfile(form.walls(), form.depth(), form.face(), form.thickness(), form.chord());
        double highest = highest();
        double ratio = Math.max(form.endRatio(), form.sideRatio());
        double widest = form.floor().radius() + form.walls().run(form.depth() - form.face()) + Math.max(ratio * highest, form.thickness());
        int corner = (int) Math.ceil(Math.PI / 4 / Math.acos(Math.max(0, 1 - form.chord() / widest)));
        this.shares = ratio > 0 ? BlendShares.of(highest, form.chord()) : new double[1];
        this.blends = shares.length - 1;
        this.rays = new Rays(form.floor(), Math.max(3, corner), along(ratio), form.creases());
        this.rings = profile.points() + blends;
        this.mouths = new Mouths(form, profile, rays, form.creases().stream().anyMatch(line -> turns(line, widest)));
        this.finished = finished();
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
                    throw Mouths.offSkin();
                }
                most = Math.max(most, form.face() - skin);
            }
        }
        return most;
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

    /** Greatest height of a blend to its length; 0 where there are none. */
    double steepest() {
        double most = 0;
        for (int ray = 0; ray < rays.count(); ray++) {
            if (mouths.length(ray) > 0) {
                double height = mouths.height(ray) - form.frame().outside(mouths.u(ray, 0), mouths.v(ray, 0));
                most = Math.max(most, height / mouths.length(ray));
            }
        }
        return most;
    }

    Rays rays() {
        return rays;
    }

    Mouths mouths() {
        return mouths;
    }

    WallProfile profile() {
        return profile;
    }

    /** At which share of the way out a ring of the blend lies. */
    double share(int ring) {
        return shares[ring - mouthRing()];
    }

    int rings() {
        return rings;
    }

    /** The ring at which walls end and blends begin. */
    int mouthRing() {
        return profile.points() - 1;
    }

    /** Where a place of the net begins in it. */
    int at(int ray, int ring) {
        return 3 * (rings * ray + ring);
    }

    /** The net of the finished face: u, v, w of each ring of each ray, rays in turn. */
    double[] net() {
        return finished.clone();
    }

    /**
     * The net of a face of the laminate.
     *
     * @param behind the finished face [m], 0 for that itself
     */
    double[] net(double behind) throws CannotBeBuilt {
        return behind > 0 ? new FaceBehind(form, this, finished, behind).net() : net();
    }

    private double[] finished() throws CannotBeBuilt {
        double[] net = new double[3 * rings * rays.count()];
        double[] wall = new double[2 * profile.points()];
        for (int ray = 0; ray < rays.count(); ray++) {
            profile.trace(mouths.height(ray), mouths.slope(ray), wall);
            lay(ray, wall, mouthRing(), net);
            for (int ring = mouthRing() + 1; ring < rings; ring++) {
                blend(ray, ring, net);
            }
            end(ray, net);
        }
        return net;
    }

    /**
     * Lays a section of the wall along a ray.
     *
     * @param wall distance and height of its points, in turn
     * @param moved the first point that lies on the surface outside, and is moved with it
     */
    void lay(int ray, double[] wall, int moved, double[] net) {
        for (int k = 0; k < profile.points(); k++) {
            double u = rays.u(ray) + rays.alongU(ray) * wall[2 * k];
            int at = at(ray, k);
            net[at] = u;
            net[at + 1] = rays.v(ray) + rays.alongV(ray) * wall[2 * k] + (k >= moved ? mouths.shift(ray, u) : 0);
            net[at + 2] = wall[2 * k + 1];
        }
    }

    private void blend(int ray, int ring, double[] net) {
        int at = at(ray, ring);
        net[at] = mouths.u(ray, share(ring));
        net[at + 1] = mouths.v(ray, share(ring));
        net[at + 2] = mouths.length(ray) == 0 ? mouths.height(ray) : form.surroundings(net[at], net[at + 1], share(ring));
    }

    /** Rings so near the skin that files cannot tell them from it are laid on the first of them. */
    private void end(int ray, double[] net) {
        double apart = apart(ray);
        for (int ring = mouthRing() + 1; ring < rings; ring++) {
            int at = at(ray, ring);
            double skin = form.frame().outside(net[at], net[at + 1]);
            if (net[at + 2] - skin < apart) {
                net[at + 2] = skin;
                for (int beyond = ring + 1; beyond < rings; beyond++) {
                    System.arraycopy(net, at, net, at(ray, beyond), 3);
                }
                return;
            }
        }
    }

    /** Faces nearer than this [m] fall together in files of single precision, at the height of the mouth. */
    private double apart(int ray) {
        double z = form.frame().toHull(mouths.u(ray, 0), mouths.v(ray, 0), mouths.height(ray)).getZ();
        return 2 * Math.ulp((float) (1000 * z)) / 1000;
    }
}
