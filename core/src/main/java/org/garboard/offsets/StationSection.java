package org.garboard.offsets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One station's points, each put into the panel it lies in. The named lines must be complete there,
 * in order, and the sheer above the keel.
 *
 * <p>A waterline's point lies in the panel whose two lines stand below and above it, a buttock's in the
 * panel whose two lines stand inboard and outboard of it; where that holds for several panels, in the one
 * whose chord is nearest. A buttock outboard of every line, as tumblehome makes it, lies in the
 * panel whose lines stand below and above it.
 */
final class StationSection {
    /** Points closer than this are one even if the table is finer [m]; our choice, far below any skin's accuracy. */
    private static final double LEAST_APART = 1e-4;
    /** Lets half a least count be half a least count in floating point [m]. */
    private static final double SLACK = 1e-9;

    private final List<NamedLine> lines;
    private final List<SectionPoint> knuckles;
    private final SectionSweep sweep;
    private final double apart;
    private final List<List<SectionPoint>> panels = new ArrayList<>();
    private final List<Stray> strays = new ArrayList<>();

    /**
     * A point that cannot be on the section.
     *
     * @param beyond index of the named line on whose wrong side it lies; none if it lies in no panel
     */
    record Stray(SectionPoint point, OptionalInt beyond) {
    }

    private StationSection(List<NamedLine> lines, List<SectionPoint> knuckles, double leastCount) {
        this.lines = lines;
        this.knuckles = knuckles;
        this.sweep = new SectionSweep(knuckles.get(0), knuckles.get(knuckles.size() - 1));
        this.apart = Math.max(leastCount / 2, LEAST_APART) + SLACK;
        for (int panel = 0; panel + 1 < knuckles.size(); panel++) {
            panels.add(new ArrayList<>());
        }
    }

    /** The section at a station. */
    static StationSection at(OffsetTable table, List<NamedLine> lines, int station) {
        List<SectionPoint> knuckles = lines.stream().map(line -> line.at(table, station).orElseThrow()).toList();
        StationSection section = new StationSection(lines, knuckles, table.leastCount());
        for (int row = 0; row < table.lines().size(); row++) {
            section.place(table.lines().get(row), row, station);
        }
        section.panels.forEach(points -> points.sort(Comparator.comparingDouble(section.sweep::at)));
        return section;
    }

    /** The points of a panel from its lower line to its upper, both included. */
    List<SectionPoint> panel(int panel) {
        List<SectionPoint> points = new ArrayList<>();
        points.add(knuckles.get(panel));
        points.addAll(panels.get(panel));
        points.add(knuckles.get(panel + 1));
        return points;
    }

    /** Points below the keel, above the sheer or in no panel, or seen past the end of the panel they should lie in. */
    List<Stray> strays() {
        return strays;
    }

    private void place(TableLine line, int row, int station) {
        OptionalDouble value = line.at(station);
        boolean waterline = line.kind() == LineKind.WATERLINE;
        if (value.isEmpty() || !waterline && line.kind() != LineKind.BUTTOCK) {
            return;
        }
        SectionPoint point = waterline
            ? new SectionPoint(value.getAsDouble(), line.level(), row)
            : new SectionPoint(line.level(), value.getAsDouble(), row);
        if (isGivenAlready(point)) {
            return;
        }
        if (!isBetween(point.z(), knuckles.get(0).z(), knuckles.get(knuckles.size() - 1).z())) {
            strays.add(new Stray(point, OptionalInt.empty()));
            return;
        }
        OptionalInt panel = waterline ? nearest(point, this::isBetweenHeights) : buttockPanel(point);
        OptionalInt beyond = panel.isPresent() ? beyondAnEnd(point, panel.getAsInt()) : OptionalInt.empty();
        if (panel.isPresent() && beyond.isEmpty()) {
            panels.get(panel.getAsInt()).add(point);
        } else {
            strays.add(new Stray(point, beyond));
        }
    }

    private boolean isGivenAlready(SectionPoint point) {
        return knuckles.stream().anyMatch(other -> isSame(point, other))
            || panels.stream().flatMap(List::stream).anyMatch(other -> isSame(point, other));
    }

    private boolean isSame(SectionPoint a, SectionPoint b) {
        return Math.hypot(a.y() - b.y(), a.z() - b.z()) <= apart;
    }

    private OptionalInt buttockPanel(SectionPoint point) {
        OptionalInt across = nearest(point, this::isBetweenHalfBreadths);
        boolean outboard = knuckles.stream().allMatch(knuckle -> point.y() > knuckle.y());
        return across.isEmpty() && outboard ? nearest(point, this::isBetweenHeights) : across;
    }

    private interface Bounds {
        boolean hold(SectionPoint point, SectionPoint lower, SectionPoint upper);
    }

    private boolean isBetweenHeights(SectionPoint point, SectionPoint lower, SectionPoint upper) {
        return isBetween(point.z(), lower.z(), upper.z());
    }

    private boolean isBetweenHalfBreadths(SectionPoint point, SectionPoint lower, SectionPoint upper) {
        return isBetween(point.y(), lower.y(), upper.y());
    }

    private boolean isBetween(double value, double a, double b) {
        return value >= Math.min(a, b) - apart && value <= Math.max(a, b) + apart;
    }

    private OptionalInt nearest(SectionPoint point, Bounds bounds) {
        OptionalInt nearest = OptionalInt.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int panel = 0; panel < panels.size(); panel++) {
            SectionPoint lower = knuckles.get(panel);
            SectionPoint upper = knuckles.get(panel + 1);
            double distance = distanceFromChord(point, lower, upper);
            if (bounds.hold(point, lower, upper) && distance < least) {
                least = distance;
                nearest = OptionalInt.of(panel);
            }
        }
        return nearest;
    }

    private static double distanceFromChord(SectionPoint point, SectionPoint lower, SectionPoint upper) {
        double chordY = upper.y() - lower.y();
        double chordZ = upper.z() - lower.z();
        double square = chordY * chordY + chordZ * chordZ;
        double along = square == 0
            ? 0
            : ((point.y() - lower.y()) * chordY + (point.z() - lower.z()) * chordZ) / square;
        double t = Math.max(0, Math.min(1, along));
        return Math.hypot(point.y() - lower.y() - t * chordY, point.z() - lower.z() - t * chordZ);
    }

    /** The line at the panel's end past which the point is seen, if either. */
    private OptionalInt beyondAnEnd(SectionPoint point, int panel) {
        if (sweep.past(point, knuckles.get(panel)) < -apart) {
            return OptionalInt.of(panel);
        }
        return sweep.past(point, knuckles.get(panel + 1)) > apart || isOutboardOfBottom(point, panel)
            ? OptionalInt.of(panel + 1)
            : OptionalInt.empty();
    }

    /** A side may swell past its lines, tumblehome does; a bottom does not swell past its chine. */
    private boolean isOutboardOfBottom(SectionPoint point, int panel) {
        LineKind lower = lines.get(panel).kind();
        return lines.get(panel + 1).kind() == LineKind.CHINE
            && (lower == LineKind.KEEL || lower == LineKind.HALF_SIDING || lower == LineKind.RABBET || lower == LineKind.KEEL_TOP)
            && point.y() > Math.max(knuckles.get(panel).y(), knuckles.get(panel + 1).y()) + apart;
    }
}
