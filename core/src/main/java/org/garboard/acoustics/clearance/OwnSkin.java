package org.garboard.acoustics.clearance;

import org.garboard.hull.Hull;

/**
 * The boat's own skin. A ray that is in the water meets it where it rises above the lowest skin at its place
 * in plan; beyond the outline of the hull there is none.
 *
 * <p>Each ray is followed in steps, so a keel thinner than a step may be missed. Our choice of step: 5 mm.
 *
 * @param hull with its keel as part of the skin, box keels too; fins and rudders are bodies of their own
 * @param start what of a ray is passed over, since a flush face touches the skin [m]
 */
public record OwnSkin(Hull hull, double start) implements Body {
    private static final double STEP = 0.005;
    /** Skin this much below a ray is the skin that the face lies in [m]. */
    private static final double TOUCH = 1e-4;
    private static final int HALVINGS = 40;
    private static final int SOUNDINGS_ALONG = 200;
    private static final int SOUNDINGS_ACROSS = 50;

    /** A face that stands in the water by itself, or lies in the skin. */
    public OwnSkin(Hull hull) {
        this(hull, STEP);
    }

    @Override
    public String name() {
        return "the hull";
    }

    @Override
    public void shorten(RayFan fan, double[] reach) {
        double lowest = lowest();
        for (int ray = 0; ray < fan.rays(); ray++) {
            double down = fan.direction(ray, 2);
            double end = reach[ray];
            if (down < 0) {
                end = Math.min(end, (lowest - fan.start(ray, 2)) / down);
            }
            double before = start;
            for (double at = start; before <= end; at += STEP) {
                double here = Math.min(at, end);
                if (here >= start && over(fan, ray, here) > TOUCH) {
                    reach[ray] = Math.max(0, meeting(fan, ray, before, here));
                    break;
                }
                if (at > end) {
                    break;
                }
                before = here;
            }
        }
    }

    /** How far a ray is above the skin [m]; NaN where there is none. */
    private double over(RayFan fan, int ray, double at) {
        return fan.start(ray, 2) + at * fan.direction(ray, 2)
            - hull.height(fan.start(ray, 0) + at * fan.direction(ray, 0), fan.start(ray, 1) + at * fan.direction(ray, 1));
    }

    private double meeting(RayFan fan, int ray, double free, double inside) {
        double low = free;
        double high = inside;
        for (int i = 0; i < HALVINGS && low < high; i++) {
            double middle = 0.5 * (low + high);
            if (over(fan, ray, middle) > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /** Below this no ray meets the skin [m]. */
    private double lowest() {
        double lowest = Double.POSITIVE_INFINITY;
        double[] heights = new double[SOUNDINGS_ACROSS];
        double length = hull.afterEnd() - hull.forwardEnd();
        double beam = 0;
        for (int i = 0; i <= SOUNDINGS_ALONG; i++) {
            beam = Math.max(beam, hull.bottomEdge().y(hull.forwardEnd() + length * i / SOUNDINGS_ALONG));
        }
        for (int i = 0; i <= SOUNDINGS_ALONG; i++) {
            hull.heights(hull.forwardEnd() + length * i / SOUNDINGS_ALONG, beam / SOUNDINGS_ACROSS, heights, 0, SOUNDINGS_ACROSS);
            for (double height : heights) {
                lowest = height < lowest ? height : lowest;
            }
        }
        // between soundings the skin may bulge a little lower: our choice of a step more
        return lowest - STEP;
    }
}
