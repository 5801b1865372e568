package org.garboard.flow.shadow;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Where on the bottom the water that a feature has disturbed runs. Both sides, as the feature stands.
 *
 * <p>Regions in plan: the feature itself and its likely wake; the advisory edge of the wake; the water that a
 * propeller draws in.
 */
public final class Shadow implements Cast {
    private final Shedder feature;
    private final List<PlanRegion> wake;
    private final List<PlanRegion> advisory;
    private final List<PlanRegion> ahead;
    private final List<Strip> strips;
    private final Optional<String> lost;

    Shadow(Shedder feature, List<PlanRegion> wake, List<PlanRegion> advisory, List<PlanRegion> ahead, List<Strip> strips, Optional<String> lost) {
        this.feature = feature;
        this.wake = List.copyOf(wake);
        this.advisory = List.copyOf(advisory);
        this.ahead = List.copyOf(ahead);
        this.strips = List.copyOf(strips);
        this.lost = lost;
    }

    /** Why it may go on where none is drawn; empty where all of it is known. */
    public Optional<String> lost() {
        return lost;
    }

    /** The feature that throws it. */
    public Shedder feature() {
        return feature;
    }

    public List<PlanRegion> wake() {
        return wake;
    }

    public List<PlanRegion> advisory() {
        return advisory;
    }

    /** Empty for all but propellers. */
    public List<PlanRegion> ahead() {
        return ahead;
    }

    /** Over which length it fades [m]; infinite where it does not. */
    public double fading() {
        return feature.sheds().fading(feature.width());
    }

    /**
     * How much of the disturbance is left at a place: 1 at the feature, falling evenly to 0 where it has faded (our choice);
     * 1 throughout where it does not fade and ahead of a propeller; 0 outside the wake.
     */
    public double strength(double x, double y) {
        if (ahead.stream().anyMatch(region -> region.contains(x, y))) {
            return 1;
        }
        if (wake.stream().noneMatch(region -> region.contains(x, y))) {
            return 0;
        }
        return Double.isInfinite(fading()) ? 1 : Math.max(0, 1 - runTo(x, y) / fading());
    }

    /** How far behind the feature the water is at a place near its wake, along the flow [m]. */
    public double runTo(double x, double y) {
        Vector2D place = Vector2D.of(x, Math.abs(y));
        double nearest = Double.POSITIVE_INFINITY;
        double run = 0;
        for (Strip strip : strips) {
            double off = strip.distance(place);
            if (off < nearest) {
                nearest = off;
                run = strip.runNear(place);
            }
        }
        return run;
    }
}
