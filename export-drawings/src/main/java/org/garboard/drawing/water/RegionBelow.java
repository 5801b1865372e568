package org.garboard.drawing.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.drawing.Point;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.geometry.Ring;

/** A region of the bottom on paper. */
final class RegionBelow {
    /** Corners nearer to the side between others are left out [m]. */
    private static final double FINE = 0.002;

    private RegionBelow() {
    }

    /** Its outline, then its holes. */
    static List<List<Point>> rings(PlanRegion region, Function<Vector2D, Point> paper) {
        List<List<Point>> rings = new ArrayList<>();
        rings.add(ring(region.outline(), paper));
        region.holes().forEach(hole -> rings.add(ring(hole, paper)));
        return rings;
    }

    /** Its aftermost place, where a line from its name may end; of regions alike far aft, the first one's. */
    static Optional<Point> aftermost(List<PlanRegion> regions, Function<Vector2D, Point> paper) {
        return regions.stream().flatMap(region -> ring(region.outline(), paper).stream()).min(Comparator.comparingDouble(Point::x));
    }

    private static List<Point> ring(Ring ring, Function<Vector2D, Point> paper) {
        return ring.simplified(FINE).points().stream().map(paper).toList();
    }
}
