package org.garboard.mount.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.flow.shadow.Shadow;

/**
 * Wakes on the bottom as stretches of half-breadth, row by row along the boat, both sides as they stand: what a search reads off at
 * every place. Owns its arrays.
 */
final class WakeRows {
    /** Between rows [m]; a wake widens by 2 mm over so much. */
    private static final double STEP = 0.02;
    /** Rows that are looked at under a footprint, its ends among them. */
    private static final int LOOKS = 5;

    private final double start;
    private final int[] first;
    private final double[] from;
    private final double[] to;
    private final int[] thrower;
    private final double[] left;

    /** One stretch of a row. */
    private record Stretch(double from, double to, int thrower, double left) {
    }

    private WakeRows(double start, List<List<Stretch>> rows) {
        this.start = start;
        this.first = new int[rows.size() + 1];
        for (int i = 0; i < rows.size(); i++) {
            first[i + 1] = first[i] + rows.get(i).size();
        }
        List<Stretch> all = rows.stream().flatMap(List::stream).toList();
        this.from = all.stream().mapToDouble(Stretch::from).toArray();
        this.to = all.stream().mapToDouble(Stretch::to).toArray();
        this.thrower = all.stream().mapToInt(Stretch::thrower).toArray();
        this.left = all.stream().mapToDouble(Stretch::left).toArray();
    }

    /**
     * @param shadows each by its number
     * @param forward end of the hull [m]
     * @param after end of the hull [m]
     */
    static WakeRows judged(List<Shadow> shadows, double forward, double after) {
        return of(shadows, forward, after, false);
    }

    /** Likewise, the advisory edge of each, and all of the wake left as far as it reaches. */
    static WakeRows advisory(List<Shadow> shadows, double forward, double after) {
        return of(shadows, forward, after, true);
    }

    private static WakeRows of(List<Shadow> shadows, double forward, double after, boolean advised) {
        int count = 1 + (int) Math.ceil((after - forward) / STEP);
        List<List<Stretch>> rows = new ArrayList<>(count);
        for (int row = 0; row < count; row++) {
            rows.add(new ArrayList<>());
        }
        for (int thrower = 0; thrower < shadows.size(); thrower++) {
            Shadow shadow = shadows.get(thrower);
            for (PlanRegion region : advised ? shadow.advisory() : shadow.wake()) {
                fill(rows, forward, region, shadow, thrower, advised);
            }
        }
        return new WakeRows(forward, rows);
    }

    private static void fill(List<List<Stretch>> rows, double forward, PlanRegion region, Shadow shadow, int thrower, boolean advised) {
        double foremost = region.outline().points().stream().mapToDouble(Vector2D::getX).min().orElseThrow();
        double aftmost = region.outline().points().stream().mapToDouble(Vector2D::getX).max().orElseThrow();
        int last = Math.min(rows.size() - 1, (int) Math.ceil((aftmost - forward) / STEP));
        for (int row = Math.max(0, (int) Math.floor((foremost - forward) / STEP)); row <= last; row++) {
            // a row half-way into what is shorter than a step
            double x = Math.max(foremost + 1e-6, Math.min(aftmost - 1e-6, forward + row * STEP));
            double[] crossings = crossings(region, x);
            for (int i = 0; i + 1 < crossings.length; i += 2) {
                double strength = advised || Double.isInfinite(shadow.fading()) ? 1
                    : Math.max(0, 1 - shadow.runTo(x, 0.5 * (crossings[i] + crossings[i + 1])) / shadow.fading());
                rows.get(row).add(new Stretch(crossings[i], crossings[i + 1], thrower, strength));
            }
        }
    }

    /** Where a row crosses the region's edges, rising. */
    private static double[] crossings(PlanRegion region, double x) {
        List<Double> found = new ArrayList<>();
        cross(region.outline().points(), x, found);
        region.holes().forEach(hole -> cross(hole.points(), x, found));
        double[] sorted = found.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        return sorted;
    }

    private static void cross(List<Vector2D> ring, double x, List<Double> found) {
        Vector2D before = ring.get(ring.size() - 1);
        for (Vector2D point : ring) {
            if (point.getX() > x != before.getX() > x) {
                found.add(before.getY() + (point.getY() - before.getY()) * (x - before.getX()) / (point.getX() - before.getX()));
            }
            before = point;
        }
    }

    /** How much is left of the strongest wake under a rectangle: 1 at what throws it, 0 outside all. */
    double left(double x, double y, double length, double width) {
        int strongest = strongest(x, y, length, width);
        return strongest < 0 ? 0 : left[strongest];
    }

    /** Which throws that wake; -1 for none. */
    int thrower(double x, double y, double length, double width) {
        int strongest = strongest(x, y, length, width);
        return strongest < 0 ? -1 : thrower[strongest];
    }

    private int strongest(double x, double y, double length, double width) {
        double inner = y - width / 2;
        double outer = y + width / 2;
        int fore = row(x - length / 2);
        int aft = row(x + length / 2);
        int strongest = -1;
        for (int look = 0; look < LOOKS; look++) {
            int row = fore + (aft - fore) * look / (LOOKS - 1);
            for (int i = first[row]; i < first[row + 1]; i++) {
                if (from[i] < outer && to[i] > inner && (strongest < 0 || left[i] > left[strongest])) {
                    strongest = i;
                }
            }
        }
        return strongest;
    }

    private int row(double x) {
        return Math.max(0, Math.min(first.length - 2, (int) Math.rint((x - start) / STEP)));
    }
}
