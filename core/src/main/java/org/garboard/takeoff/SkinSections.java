package org.garboard.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.garboard.offsets.LengthWords;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.PanelOffsets;
import org.garboard.offsets.SectionPoint;

/** Puts the points of every station into the panels that they lie in, in order from the keel outward. */
final class SkinSections {
    /**
     * Points nearer than this are drawn as one, half-way between: marks set out on both sides of a boat come so
     * near without being pairs, and a skin drawn through both would swing. Our choice; over 10 mm a skin bent to
     * 100 mm of radius, harder than any bilge, leaves its chord by 0.1 mm.
     */
    private static final double ONE_POINT = 0.01;
    /** A point on a section whose chord it leaves more steeply than this, 76 degrees, was misread. Our choice. */
    private static final double STEEPEST = 4;

    private final TakeOff takeOff;
    private final List<MarkedLine> lines;
    private final LengthWords words;
    private final List<TakeOffFault> faults = new ArrayList<>();

    /** A point in a panel: its share of the way from line to line, and its distance from the straight between them. */
    private record Inner(SectionPoint point, double share, double off) {
    }

    /** @param lines that bound the panels, from the keel outward */
    SkinSections(TakeOff takeOff, List<MarkedLine> lines) {
        this.takeOff = takeOff;
        this.lines = lines;
        this.words = new LengthWords(takeOff.leastCount());
    }

    /** What the last {@link #panels} met. */
    List<TakeOffFault> faults() {
        return List.copyOf(faults);
    }

    List<PanelOffsets> panels(PlacedPoints placed) {
        faults.clear();
        List<List<List<SectionPoint>>> panels = new ArrayList<>();
        for (int p = 0; p + 1 < lines.size(); p++) {
            panels.add(new ArrayList<>());
        }
        for (int j = 0; j < takeOff.stations().size(); j++) {
            List<List<SectionPoint>> section = section(j, placed);
            for (int p = 0; p < panels.size(); p++) {
                panels.get(p).add(section.get(p));
            }
        }
        List<PanelOffsets> named = new ArrayList<>();
        for (int p = 0; p < panels.size(); p++) {
            named.add(new PanelOffsets(lines.get(p).name(), lines.get(p + 1).name(), panels.get(p)));
        }
        return named;
    }

    private List<List<SectionPoint>> section(int station, PlacedPoints placed) {
        List<SectionPoint> knuckles = lines.stream().map(line -> knuckle(line, station, placed)).toList();
        List<List<Inner>> inner = new ArrayList<>();
        for (int p = 0; p + 1 < lines.size(); p++) {
            inner.add(new ArrayList<>());
            if (Math.hypot(knuckles.get(p + 1).y() - knuckles.get(p).y(), knuckles.get(p + 1).z() - knuckles.get(p).z()) <= ONE_POINT) {
                faults.add(TakeOffFault.at(knuckles.get(p + 1).line(), lines.get(p + 1).name() + " lies on "
                    + lines.get(p).name() + "; the skin between two lines is wider than " + words.say(ONE_POINT)));
                return inner.stream().<List<SectionPoint>>map(none -> List.of()).toList();
            }
        }
        for (SectionPoint point : loose(station, placed)) {
            place(point, knuckles, inner);
        }
        List<List<SectionPoint>> section = new ArrayList<>();
        for (int p = 0; p < inner.size(); p++) {
            inner.get(p).sort(Comparator.comparingDouble(Inner::share));
            contradictions(inner.get(p), knuckles.get(p), knuckles.get(p + 1));
            List<SectionPoint> points = new ArrayList<>();
            points.add(knuckles.get(p));
            inner.get(p).forEach(each -> points.add(each.point()));
            points.add(knuckles.get(p + 1));
            section.add(points);
        }
        return section;
    }

    /** Of both sides, half-way between them; the keel on the centreline. */
    private SectionPoint knuckle(MarkedLine line, int station, PlacedPoints placed) {
        List<Integer> points = line.stations().get(station);
        SectionPoint mean = mean(points, placed);
        return line.kind() == LineKind.KEEL ? new SectionPoint(0, mean.z(), mean.line()) : mean;
    }

    private SectionPoint mean(List<Integer> points, PlacedPoints placed) {
        double y = 0;
        double z = 0;
        for (int point : points) {
            y += placed.y(point) / points.size();
            z += placed.z(point) / points.size();
        }
        return new SectionPoint(y, z, takeOff.points().get(points.get(0)).row());
    }

    /** The station's points on no line, pairs and near neighbours as one. */
    private List<SectionPoint> loose(int station, PlacedPoints placed) {
        List<List<Integer>> groups = new ArrayList<>();
        List<Integer> onLines = lines.stream().flatMap(line -> line.stations().get(station).stream()).toList();
        for (int i = 0; i < takeOff.points().size(); i++) {
            int point = i;
            if (takeOff.points().get(i).station() == station && takeOff.points().get(i).mark().isOnSkin() && !onLines.contains(i)) {
                groups.stream().filter(group -> isOne(group.get(0), point, placed)).findFirst()
                    .orElseGet(() -> {
                        List<Integer> group = new ArrayList<>();
                        groups.add(group);
                        return group;
                    }).add(point);
            }
        }
        return groups.stream().map(group -> mean(group, placed)).toList();
    }

    private boolean isOne(int a, int b, PlacedPoints placed) {
        Mark mark = takeOff.points().get(a).mark();
        return !mark.equals(Mark.NONE) && mark.equals(takeOff.points().get(b).mark())
            || Math.hypot(placed.y(a) - placed.y(b), placed.z(a) - placed.z(b)) <= ONE_POINT;
    }

    /** Into the panel whose straight from line to line is nearest. */
    private void place(SectionPoint point, List<SectionPoint> knuckles, List<List<Inner>> panels) {
        int nearest = -1;
        double least = Double.POSITIVE_INFINITY;
        Inner best = null;
        for (int p = 0; p < panels.size(); p++) {
            Inner seen = seen(point, knuckles.get(p), knuckles.get(p + 1));
            double length = length(knuckles.get(p), knuckles.get(p + 1));
            double beyond = Math.max(0, Math.max(-seen.share(), seen.share() - 1)) * length;
            double distance = Math.hypot(beyond, seen.off());
            if (distance < least) {
                least = distance;
                nearest = p;
                best = seen;
            }
        }
        SectionPoint near = best.share() < 0.5 ? knuckles.get(nearest) : knuckles.get(nearest + 1);
        if (length(point, near) <= ONE_POINT) {
            return;
        }
        if (best.share() <= 0 || best.share() >= 1) {
            MarkedLine line = lines.get(best.share() <= 0 ? nearest : nearest + 1);
            faults.add(TakeOffFault.at(point.line(), "this point (" + words.say(point) + " in the boat's own frame) lies "
                + (best.share() <= 0 ? "inboard of " : "beyond ") + line.name() + " (" + words.say(near) + ")"
                + (nearest == panels.size() - 1 && best.share() >= 1 ? "; mark the outermost point of the station, or leave this one out"
                : "; see whether it or its side was misread")));
            return;
        }
        panels.get(nearest).add(best);
    }

    private static Inner seen(SectionPoint point, SectionPoint lower, SectionPoint upper) {
        double length = length(lower, upper);
        double alongY = (upper.y() - lower.y()) / length;
        double alongZ = (upper.z() - lower.z()) / length;
        double y = point.y() - lower.y();
        double z = point.z() - lower.z();
        return new Inner(point, (y * alongY + z * alongZ) / length, z * alongY - y * alongZ);
    }

    private static double length(SectionPoint a, SectionPoint b) {
        return Math.hypot(a.y() - b.y(), a.z() - b.z());
    }

    private void contradictions(List<Inner> points, SectionPoint lower, SectionPoint upper) {
        double length = length(lower, upper);
        Inner before = new Inner(lower, 0, 0);
        for (int i = 0; i <= points.size(); i++) {
            Inner next = i < points.size() ? points.get(i) : new Inner(upper, 1, 0);
            double step = Math.abs(next.off() - before.off());
            if (step > 2 * takeOff.leastCount() && step > STEEPEST * (next.share() - before.share()) * length) {
                Inner told = i < points.size() ? next : before;
                Inner other = i < points.size() ? before : next;
                faults.add(TakeOffFault.at(told.point().line(), "this point (" + words.say(told.point())
                    + " in the boat's own frame) and the one in line " + other.point().line() + " ("
                    + words.say(other.point()) + ") cannot both lie on one section; see which was misread"));
            }
            before = next;
        }
    }
}
