package org.garboard.cutout.pocket;

import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;

/** On each ray: where the wall ends on the face's surroundings or on the skin, and how far the blend runs from there. */
final class Mouths {
    /** A blend shorter than this is left out [m]; our choice, the width of a pencil line. */
    static final double SHORTEST = 3e-4;
    private static final double CLOSE = 1e-9;
    private static final int TRIED = 24;
    /** Our choice: little enough that air runs out over it. */
    private static final double LEFT = 0.1;
    /** Over which the skin's slope along a ray is read [m]. */
    private static final double REACH = 1e-4;

    private final PocketForm form;
    private final WallProfile profile;
    private final Rays rays;
    private final boolean bent;
    private final double[] mouth;
    private final double[] slope;
    private final double[] lengthU;
    private final double[] lengthV;

    /** @param bent whether an edge of the skin is not straight fore and aft in plan */
    Mouths(PocketForm form, WallProfile profile, Rays rays, boolean bent) throws CannotBeBuilt {
        this.form = form;
        this.profile = profile;
        this.rays = rays;
        this.bent = bent;
        this.mouth = new double[rays.count()];
        this.slope = new double[rays.count()];
        this.lengthU = new double[rays.count()];
        this.lengthV = new double[rays.count()];
        for (int ray = 0; ray < rays.count(); ray++) {
            settle(ray);
        }
    }

    static CannotBeBuilt offSkin() {
        return new CannotBeBuilt("the pocket runs off the skin", "a smaller pocket, or a site farther inside the bottom");
    }

    private void settle(int ray) throws CannotBeBuilt {
        meet(ray, form.endRatio() > 0);
        double over = form.endRatio() > 0 ? mouth[ray] - form.frame().outside(u(ray, 0), v(ray, 0)) : 0;
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

    private void meet(int ray, boolean blended) throws CannotBeBuilt {
        mouth[ray] = form.face();
        slope[ray] = 0;
        for (int i = 0; i < 60; i++) {
            double u = u(ray, 0);
            double v = v(ray, 0);
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
        double at = u(ray, 0) + u;
        double across = rays.v(ray) + rays.alongV(ray) * distance(ray) + v + shift(ray, at);
        return PocketForm.above(form.face() - form.frame().outside(at, across));
    }

    /** Height of the wall's end [m]. */
    double height(int ray) {
        return mouth[ray];
    }

    /** Slope of the surface outside there, going outward [rad]. */
    double slope(int ray) {
        return slope[ray];
    }

    /** Of the wall's end from the floor's outline, along the ray [m]. */
    double distance(int ray) {
        return profile.reach(mouth[ray], slope[ray]);
    }

    /** How far the blend reaches from the wall's end along the frame [m]. */
    double lengthU(int ray) {
        return lengthU[ray];
    }

    /** And across it. */
    double lengthV(int ray) {
        return lengthV[ray];
    }

    /** Length of the blend [m]; 0 where there is none. */
    double length(int ray) {
        return Math.hypot(lengthU[ray], lengthV[ray]);
    }

    /** Along the frame, at a share of the blend [m]. */
    double u(int ray, double share) {
        return rays.u(ray) + rays.alongU(ray) * distance(ray) + share * lengthU[ray];
    }

    /** Across the frame. */
    double v(int ray, double share) {
        return rays.v(ray) + rays.alongV(ray) * distance(ray) + share * lengthV[ray] + shift(ray, u(ray, share));
    }

    /** How far a ray from an end is moved sideways at u, so that it stays on the edges of the skin. */
    double shift(int ray, double u) {
        return bent && rays.isEnd(ray)
            ? rays.shift(ray, u, form.creases(), form.floor().width() / 2 - form.floor().radius()) : 0;
    }
}
