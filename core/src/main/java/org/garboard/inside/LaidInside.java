package org.garboard.inside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.garboard.craft.Sides;
import org.garboard.finding.Bound;
import org.garboard.finding.Figure;
import org.garboard.finding.Finding;
import org.garboard.finding.NotKnown;
import org.garboard.finding.Ruling;
import org.garboard.hull.Hull;

/** The inside of a boat laid on her hull. */
public final class LaidInside {
    /** Nearer to fuel than this no hole is drilled. */
    public static final Bound FUEL_MARGIN = new Bound(100, "mm", "our choice, because a drill that breaks through runs on that far");
    private static final String FUEL = "fuel behind the skin";
    private static final String HAND = "room for hand and wrench";
    private static final String HEAD = "headroom over the stem";
    private static final String PRACTICE = "common practice, no source";

    /** Between the block inside and the next thing beside it. */
    public static final Bound WRENCH = new Bound(75, "mm", "our choice, because a hand with a wrench on the nut needs that much beside it");

    private final List<Box> boxes = new ArrayList<>();
    private final List<Span> seen = new ArrayList<>();

    /** One room on one side, or across. */
    private record Box(Room room, Span along, Span athwart) {
        double gap(Span x, Span y) {
            return Math.hypot(along.gap(x), athwart.gap(y));
        }

        double gap(double x, double y, double length, double width) {
            double ahead = Math.max(0, Math.max(x - length / 2 - along.to(), along.from() - x - length / 2));
            double out = Math.max(0, Math.max(y - width / 2 - athwart.to(), athwart.from() - y - width / 2));
            return Math.hypot(ahead, out);
        }
    }

    private LaidInside() {
    }

    public static LaidInside on(Hull hull, Inside inside) {
        Map<String, Double> datums = new LinkedHashMap<>();
        inside.datums().forEach(datum -> datums.put(datum.name(), datum.x(hull)));
        LaidInside laid = new LaidInside();
        for (Room room : inside.rooms()) {
            Span along = aft(datums.get(room.datum()), room.ahead());
            room.athwart().forEach(athwart -> laid.boxes.add(new Box(room, along, athwart)));
        }
        inside.seen().forEach(each -> laid.seen.add(aft(datums.get(each.datum()), each.ahead())));
        return laid;
    }

    private static Span aft(double datum, Span ahead) {
        return new Span(datum - ahead.to(), datum - ahead.from());
    }

    /** Where the table's ends lie inside of a room, the room lies outside the boat: names of such rooms. */
    public List<String> beyond(Hull hull) {
        return boxes.stream().filter(box -> box.along.from() > hull.afterEnd() || box.along.to() < hull.forwardEnd())
            .map(box -> box.room.name()).distinct().toList();
    }

    /**
     * Fuel, room beside, room above, in turn.
     *
     * @param x of the stem [m]
     * @param y of the stem [m]
     * @param length of the block or flange inside, fore and aft [m]
     * @param width athwart [m]
     * @param headroom above the inside of the skin that it takes to set the nut, draw the transducer and fit its
     *     blank [m]
     */
    public List<Finding> at(double x, double y, double length, double width, double headroom) {
        Span along = Span.about(x, length);
        Span athwart = Span.about(y, width);
        List<Finding> findings = new ArrayList<>();
        boolean looked = seen.stream().anyMatch(stretch -> stretch.contains(along));
        findings.add(fuel(along, athwart, looked));
        if (looked) {
            findings.add(beside(along, athwart, headroom));
            findings.add(above(along, athwart, headroom));
        } else {
            findings.add(unseen(HAND, WRENCH.source()));
            findings.add(unseen(HEAD, PRACTICE));
        }
        return findings;
    }

    /** Where nothing is told of the inside. */
    public static List<Finding> untold() {
        return List.of(unseen(FUEL, PRACTICE), unseen(HAND, WRENCH.source()), unseen(HEAD, PRACTICE));
    }

    /** Fuel that is told refuses a place, whether all around was looked at or not, and however high it stands. */
    private Finding fuel(Span along, Span athwart, boolean looked) {
        for (Box box : boxes) {
            if (box.room.kind().isFuel() && box.gap(along, athwart) < FUEL_MARGIN.value() / 1000) {
                return Ruling.refused(FUEL, PRACTICE, "A " + box.room.kind().words() + " (" + box.room.name() + ") lies behind the skin.");
            }
        }
        return looked ? Ruling.allowed(FUEL, PRACTICE, "No fuel tank or fuel line lies behind the skin here.") : unseen(FUEL, PRACTICE);
    }

    /** Whether the whole stretch of a block was looked at from inside. */
    public boolean lookedAt(double x, double length) {
        for (int i = 0; i < seen.size(); i++) {
            if (seen.get(i).from() <= x - length / 2 && x + length / 2 <= seen.get(i).to()) {
                return true;
            }
        }
        return false;
    }

    /** Level distance of a block from the nearest fuel that is told [m], 0 where it lies behind the block; infinite where none is told. */
    public double fuelGap(double x, double y, double length, double width) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < boxes.size(); i++) {
            if (boxes.get(i).room.kind().isFuel()) {
                nearest = Math.min(nearest, boxes.get(i).gap(x, y, length, width));
            }
        }
        return nearest;
    }

    /** Level distance of a block from the nearest thing that stands less than the headroom above the skin [m]. */
    public double besideGap(double x, double y, double length, double width, double headroom) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < boxes.size(); i++) {
            if (boxes.get(i).room.above().from() < headroom) {
                nearest = Math.min(nearest, boxes.get(i).gap(x, y, length, width));
            }
        }
        return nearest;
    }

    /** Height above the skin of the lowest thing over a block [m]; infinite where there is none. */
    public double headroom(double x, double y, double length, double width) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < boxes.size(); i++) {
            if (boxes.get(i).gap(x, y, length, width) == 0) {
                lowest = Math.min(lowest, boxes.get(i).room.above().from());
            }
        }
        return lowest;
    }

    /** What is told to stand behind a stretch of bottom, at whatever height. */
    public List<Room> behind(Span along, Span athwart) {
        return boxes.stream().filter(box -> box.gap(along, athwart) == 0).map(Box::room).distinct().toList();
    }

    /** What is nearest to a block, the first of equals: "fuel tank (Main tank)"; empty where nothing is told. */
    public String nearest(double x, double y, double length, double width) {
        double nearest = Double.POSITIVE_INFINITY;
        String what = "";
        for (Box box : boxes) {
            double gap = box.gap(x, y, length, width);
            if (gap < nearest) {
                nearest = gap;
                what = box.room.kind().words() + " (" + box.room.name() + ")";
            }
        }
        return what;
    }

    /** Whether port and starboard are alike. */
    public boolean isSymmetrical() {
        return boxes.stream().allMatch(box -> box.room.sides() == Sides.BOTH);
    }

    private Finding beside(Span along, Span athwart, double headroom) {
        double nearest = Double.POSITIVE_INFINITY;
        String what = "";
        for (Box box : boxes) {
            double gap = box.gap(along, athwart);
            if (box.room.above().from() < headroom && gap < nearest) {
                nearest = gap;
                what = box.room.name();
            }
        }
        return Figure.atLeast(HAND, nearest * 1000, WRENCH, "Hand and wrench find room inside.",
            nearest > 0 ? "The block inside comes too near: " + what + "." : "The block inside would stand in the way of " + what + ".");
    }

    private Finding above(Span along, Span athwart, double headroom) {
        double lowest = Double.POSITIVE_INFINITY;
        String what = "";
        for (Box box : boxes) {
            if (box.gap(along, athwart) == 0 && box.room.above().from() < lowest) {
                lowest = box.room.above().from();
                what = box.room.name();
            }
        }
        Bound bound = new Bound(headroom * 1000, "mm", "the transducer's height drawn inward, and its blank: common practice, no source");
        return Figure.atLeast(HEAD, lowest * 1000, bound, "There is room above to draw the transducer and fit its blank.",
            "Too little room under " + what + " to draw the transducer and fit its blank.");
    }

    private static Finding unseen(String name, String source) {
        return new NotKnown(name, source, "Nobody looked inside here, as far as is told: stringers, bulkheads, engine, tanks,"
            + " fuel tank and fuel line behind the skin.");
    }
}
