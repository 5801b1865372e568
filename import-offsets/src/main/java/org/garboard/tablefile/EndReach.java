package org.garboard.tablefile;

import java.util.List;
import java.util.OptionalDouble;
import org.garboard.offsets.EndPoint;
import org.garboard.offsets.LengthWords;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;

/**
 * Whether the lines of steps and transom lie where the stations tell of the skin. A length is lofted on past its
 * last station by at most half the gap before it (our choice: farther out the stations say little); to the stem, where
 * the skin is held by where it ends, by at most the first two gaps.
 */
final class EndReach {
    private static final double SHARE = 0.5;

    private final OffsetTable table;
    private final ToldFrame frame;
    private final Problems problems;
    private final LengthWords words;

    EndReach(OffsetTable table, ToldFrame frame, Problems problems) {
        this.table = table;
        this.frame = frame;
        this.problems = problems;
        this.words = new LengthWords(table.leastCount());
    }

    private double x(int station) {
        return table.stations().get(station).x();
    }

    /** @param after station of the step's after face */
    boolean isStep(List<PlacedEnd> ends, int after) {
        boolean sound = true;
        double before = 0;
        for (PlacedEnd end : ends) {
            LineKind kind = end.point().kind();
            if (kind == LineKind.SHEER || kind == LineKind.WATERLINE) {
                problems.inCell(end.line(), "", "", "is no line of the bottom; a step is given at the keel, at buttocks and at the chine");
                return false;
            }
            OptionalDouble y = halfBreadth(end.point(), after - 1);
            if (end == ends.get(0) && y.orElse(0) != 0) {
                problems.inCell(end.line(), "", "", "is the first place of a step's line; begin at the keel");
                sound = false;
            }
            if (y.isPresent() && y.getAsDouble() < before) {
                problems.inCell(end.line(), "", "", "lies inboard of the place before it; give the line of a step from the keel outward");
                sound = false;
            }
            before = y.orElse(before);
            sound &= isWithin(end, x(after) - reachForward(after), x(after) + reachAft(after - 1), "the step at station "
                + table.stations().get(after - 1).name());
        }
        return sound;
    }

    /** How far aft of a station the length that ends there is drawn. */
    private double reachAft(int station) {
        boolean alone = station == 0 || table.isAfterFace(station);
        return alone ? 0 : SHARE * (x(station) - x(station - 1));
    }

    private double reachForward(int station) {
        boolean alone = station + 1 >= table.stations().size() || table.isAfterFace(station + 1);
        return alone ? 0 : SHARE * (x(station + 1) - x(station));
    }

    private OptionalDouble halfBreadth(EndPoint point, int station) {
        return switch (point.kind()) {
            case KEEL -> OptionalDouble.of(0);
            case BUTTOCK -> OptionalDouble.of(point.level());
            default -> entry(point, Measure.HALF_BREADTH, station);
        };
    }

    private OptionalDouble entry(EndPoint point, Measure measure, int station) {
        return table.lines().stream().filter(line -> line.name().equals(point.line()) && line.measure() == measure)
            .findFirst().map(line -> line.at(station)).orElse(OptionalDouble.empty());
    }

    boolean isTransom(List<PlacedEnd> ends) {
        int last = table.stations().size() - 1;
        boolean sound = true;
        if (ends.size() < 2) {
            problems.inCell(ends.get(0).line(), "", "", "is the only place at which the transom is given; give it at the keel and"
                + " at the sheer at least");
            return false;
        }
        double before = Double.NEGATIVE_INFINITY;
        for (PlacedEnd end : ends) {
            LineKind kind = end.point().kind();
            if (kind == LineKind.BUTTOCK || kind == LineKind.HALF_SIDING) {
                problems.inCell(end.line(), "", "", "is no place of a transom; it is given at Keel, chines, Sheer and at"
                    + " waterlines with their heights");
                return false;
            }
            OptionalDouble z = kind == LineKind.WATERLINE
                ? OptionalDouble.of(end.point().level()) : entry(end.point(), Measure.HEIGHT, last);
            if (z.isPresent() && !(z.getAsDouble() > before)) {
                problems.inCell(end.line(), "", "", "stands no higher than the place before it; give the transom from the keel up");
                sound = false;
            }
            before = z.orElse(before);
            double from = last > 0 ? x(last - 1) : x(last);
            sound &= isWithin(end, from, x(last) + reachAft(last), "the transom");
        }
        return sound;
    }

    boolean isStem(List<PlacedEnd> ends) {
        PlacedEnd foot = ends.get(0);
        PlacedEnd head = ends.get(ends.size() - 1);
        if (foot.point().kind() != LineKind.KEEL && foot.point().kind() != LineKind.RABBET) {
            problems.inCell(foot.line(), "", "", "is the first place of the stem; begin where the keel line ends on it");
            return false;
        }
        if (head.point().kind() != LineKind.SHEER) {
            problems.inCell(head.line(), "", "", "is the last place of the stem; end at the Sheer");
            return false;
        }
        boolean sound = true;
        double before = Double.NEGATIVE_INFINITY;
        for (PlacedEnd end : ends) {
            LineKind kind = end.point().kind();
            if (kind == LineKind.BUTTOCK || kind == LineKind.HALF_SIDING) {
                problems.inCell(end.line(), "", "", "is no place of a stem; it is given at Keel, chines, Sheer and at"
                    + " waterlines with their heights");
                return false;
            }
            OptionalDouble z = kind == LineKind.WATERLINE ? OptionalDouble.of(end.point().level()) : OptionalDouble.empty();
            if (z.isPresent() && !(z.getAsDouble() > before)) {
                problems.inCell(end.line(), "", "", "stands no higher than the place before it; give the stem from the keel up");
                sound = false;
            }
            before = z.orElse(before);
            sound &= isAhead(end);
        }
        return sound;
    }

    private boolean isAhead(PlacedEnd end) {
        double least = x(0) - (x(Math.min(2, table.stations().size() - 1)) - x(0));
        if (end.x() < x(0) && end.x() >= least) {
            return true;
        }
        String first = "station " + table.stations().get(0).name();
        problems.inCell(end.distance(), end.line().text(), "distance", end.x() < x(0)
            ? "lies farther forward of " + first + " than the second station behind it lies aft; the skin is drawn on to the stem from "
                + words.say(frame.told(least)) + " at the farthest; compare the distance, or put a station nearer to the stem"
            : "does not lie forward of " + first + ", which stands at " + words.say(frame.told(x(0))) + "; a stem is given where"
                + " the skin goes on ahead of the first station; where the keel line rises into it within the stations, leave the row out");
        return false;
    }

    private boolean isWithin(PlacedEnd end, double from, double to, String what) {
        if (end.x() >= from && end.x() <= to) {
            return true;
        }
        double one = frame.told(from);
        double other = frame.told(to);
        problems.inCell(end.distance(), end.line().text(), "distance", "lies off the stations of " + what
            + ", which tell of the skin from " + words.say(Math.min(one, other)) + " to " + words.say(Math.max(one, other))
            + "; compare the distance, or put a station nearer");
        return false;
    }
}
