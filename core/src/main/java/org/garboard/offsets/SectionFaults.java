package org.garboard.offsets;

import java.util.ArrayList;
import java.util.List;

/** The faults seen at one station whose named lines are complete. */
final class SectionFaults {
    private final OffsetTable table;
    private final List<NamedLine> lines;
    private final int station;
    private final LengthWords words;
    private final List<SectionPoint> knuckles;
    private final List<TableFault> faults = new ArrayList<>();

    private SectionFaults(OffsetTable table, List<NamedLine> lines, int station) {
        this.table = table;
        this.lines = lines;
        this.station = station;
        this.words = new LengthWords(table.leastCount());
        this.knuckles = lines.stream().map(line -> line.at(table, station).orElseThrow()).toList();
    }

    /** Points are looked at only where the named lines they are held against are sound. */
    static List<TableFault> at(OffsetTable table, List<NamedLine> lines, int station) {
        SectionFaults check = new SectionFaults(table, lines, station);
        check.heightsOfLines();
        if (check.faults.isEmpty()) {
            check.orderOfLines();
        }
        if (check.faults.isEmpty()) {
            StationSection section = StationSection.at(table, lines, station);
            check.strays(section);
            for (int panel = 0; panel + 1 < lines.size(); panel++) {
                List<SectionPoint> points = section.panel(panel);
                check.backwards(points);
                if (check.faults.isEmpty()) {
                    check.contradictions(points);
                }
            }
        }
        return check.faults;
    }

    private void heightsOfLines() {
        SectionPoint keel = knuckles.get(0);
        SectionPoint sheer = knuckles.get(knuckles.size() - 1);
        if (sheer.z() <= keel.z()) {
            add(sheer, "height " + words.say(sheer.z()) + " is not above the keel's " + words.say(keel.z()));
        }
        for (int i = 1; i + 1 < lines.size(); i++) {
            SectionPoint chine = knuckles.get(i);
            boolean ownHeights = lines.get(i).kind() != LineKind.HALF_SIDING && lines.get(i).kind() != LineKind.RABBET;
            if (ownHeights && chine.z() < keel.z() - table.leastCount()) {
                add(chine, "height " + words.say(chine.z()) + " is below the keel's " + words.say(keel.z())
                    + "; a bottom that falls outboard cannot be lofted yet");
            }
            if (ownHeights && chine.z() > sheer.z()) {
                add(chine, "height " + words.say(chine.z()) + " is above the sheer's " + words.say(sheer.z()));
            }
        }
    }

    private void orderOfLines() {
        SectionSweep sweep = new SectionSweep(knuckles.get(0), knuckles.get(knuckles.size() - 1));
        for (int i = 1; i < lines.size(); i++) {
            if (sweep.past(knuckles.get(i), knuckles.get(i - 1)) < -table.leastCount()) {
                add(knuckles.get(i), "(" + words.say(knuckles.get(i)) + ") lies inboard of or below "
                    + lines.get(i - 1).name() + " (" + words.say(knuckles.get(i - 1)) + "); the two lines cross here");
            }
        }
    }

    private void strays(StationSection section) {
        for (StationSection.Stray stray : section.strays()) {
            SectionPoint point = stray.point();
            String where = words.say(point);
            if (stray.beyond().isPresent()) {
                int line = stray.beyond().getAsInt();
                add(point, where + " lies on the wrong side of " + lines.get(line).name()
                    + " (" + words.say(knuckles.get(line)) + ")");
            } else {
                add(point, where + " lies " + whereOutside(point)
                    + "; leave the cell blank where the line does not cross");
            }
        }
    }

    private String whereOutside(SectionPoint point) {
        SectionPoint keel = knuckles.get(0);
        SectionPoint sheer = knuckles.get(knuckles.size() - 1);
        if (point.z() < keel.z()) {
            return "below the keel at " + words.say(keel.z());
        }
        return point.z() > sheer.z() ? "above the sheer at " + words.say(sheer.z()) : "outboard of the hull";
    }

    /**
     * Within a panel waterlines follow each other by height and buttocks by distance, in the direction from
     * the lower line to the upper. Half-breadths may shrink upward, as tumblehome has it; the order may not turn.
     */
    private void backwards(List<SectionPoint> panel) {
        SectionPoint lower = panel.get(0);
        SectionPoint upper = panel.get(panel.size() - 1);
        SectionPoint waterline = null;
        SectionPoint buttock = null;
        for (SectionPoint point : panel.subList(1, panel.size() - 1)) {
            if (table.lines().get(point.line()).kind() == LineKind.WATERLINE) {
                if (waterline != null && (point.z() - waterline.z()) * (upper.z() - lower.z()) < 0) {
                    addBackwards(waterline, point);
                }
                waterline = point;
            } else if (point.y() <= Math.max(lower.y(), upper.y())) {
                if (buttock != null && (point.y() - buttock.y()) * (upper.y() - lower.y()) < 0) {
                    addBackwards(buttock, point);
                }
                buttock = point;
            }
        }
    }

    /**
     * A waterline may contradict a buttock, or the line at the panel's end. Seen square to the straight line that
     * joins the panel's two lines, its points must follow each other: the skin is drawn over that line.
     */
    private void contradictions(List<SectionPoint> panel) {
        SectionPoint lower = panel.get(0);
        SectionPoint upper = panel.get(panel.size() - 1);
        SectionPoint before = lower;
        for (SectionPoint point : panel.subList(1, panel.size() - 1)) {
            if (ahead(before, point, lower, upper) <= 0) {
                addBackwards(before, point);
            }
            before = point;
        }
        if (before != lower && ahead(before, upper, lower, upper) <= 0) {
            addBackwards(upper, before);
        }
    }

    private static double ahead(SectionPoint from, SectionPoint to, SectionPoint lower, SectionPoint upper) {
        return (to.y() - from.y()) * (upper.y() - lower.y()) + (to.z() - from.z()) * (upper.z() - lower.z());
    }

    private void addBackwards(SectionPoint before, SectionPoint after) {
        add(after, words.say(after) + " runs backwards past " + table.lines().get(before.line()).name()
            + " (" + words.say(before) + "); one of the two is wrong");
    }

    private void add(SectionPoint point, String reason) {
        faults.add(TableFault.inCell(point.line(), station, reason));
    }
}
