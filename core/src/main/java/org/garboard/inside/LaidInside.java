package org.garboard.inside;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.garboard.craft.Sides;
import org.garboard.finding.Bound;
import org.garboard.hull.Hull;

/** The inside of a boat laid on her hull. */
public final class LaidInside {
    /** Nearer to fuel than this no hole is drilled. */
    public static final Bound FUEL_MARGIN = new Bound(100, "mm", "our choice, because a drill that breaks through runs on that far");

    /** Between the block inside and the next thing beside it. */
    public static final Bound WRENCH = new Bound(75, "mm", "our choice, because a hand with a wrench on the nut needs that much beside it");
    /** Between the block inside and a limber hole. */
    public static final Bound LIMBER = new Bound(50, "mm", "our choice, because a block nearer to it makes a dam before the hole");

    private final List<Box> boxes = new ArrayList<>();
    private final List<Span> seen = new ArrayList<>();

    /** One room on one side, or across. */
    private record Box(Room room, Span along, Span athwart) {
        /** "fuel tank (Main tank, measured from Drain)". */
        String told() {
            return room.kind().words() + " (" + room.name() + ", measured from " + room.datum() + ")";
        }

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

    /** Where the table's ends lie inside of a room, the room lies outside the boat: such rooms. */
    public List<Room> beyond(Hull hull) {
        return boxes.stream().filter(box -> box.along.from() > hull.afterEnd() || box.along.to() < hull.forwardEnd())
            .map(Box::room).distinct().toList();
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
        return gap(x, y, length, width, Room.Kind::isFuel);
    }

    /** Likewise from the nearest limber hole. */
    public double limberGap(double x, double y, double length, double width) {
        return gap(x, y, length, width, kind -> kind == Room.Kind.LIMBER_HOLE);
    }

    private double gap(double x, double y, double length, double width, Predicate<Room.Kind> which) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < boxes.size(); i++) {
            if (which.test(boxes.get(i).room.kind())) {
                nearest = Math.min(nearest, boxes.get(i).gap(x, y, length, width));
            }
        }
        return nearest;
    }

    /** Level distance of a block from the nearest thing that stands less than the headroom above the skin [m]. */
    public double besideGap(double x, double y, double length, double width, double headroom) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < boxes.size(); i++) {
            if (boxes.get(i).room.kind().isSolid() && boxes.get(i).room.above().from() < headroom) {
                nearest = Math.min(nearest, boxes.get(i).gap(x, y, length, width));
            }
        }
        return nearest;
    }

    /** Height above the skin of the lowest thing over a block [m]; infinite where there is none. */
    public double headroom(double x, double y, double length, double width) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < boxes.size(); i++) {
            if (boxes.get(i).room.kind().isSolid() && boxes.get(i).gap(x, y, length, width) == 0) {
                lowest = Math.min(lowest, boxes.get(i).room.above().from());
            }
        }
        return lowest;
    }

    /** What stands lowest over a block, and what it was measured from; empty where nothing does. */
    public String over(double x, double y, double length, double width) {
        return boxes.stream().filter(box -> box.room.kind().isSolid() && box.gap(x, y, length, width) == 0)
            .min(Comparator.comparingDouble(box -> box.room.above().from())).map(Box::told).orElse("");
    }

    /** What is told to stand behind a stretch of bottom, at whatever height. */
    public List<Room> behind(Span along, Span athwart) {
        return boxes.stream().filter(box -> box.gap(along, athwart) == 0).map(Box::room).distinct().toList();
    }

    /** What is nearest to a block, the first of equals, and what it was measured from; empty where nothing is told. */
    public String nearest(double x, double y, double length, double width) {
        double nearest = Double.POSITIVE_INFINITY;
        String what = "";
        for (Box box : boxes) {
            double gap = box.gap(x, y, length, width);
            if (gap < nearest) {
                nearest = gap;
                what = box.told();
            }
        }
        return what;
    }

    /** Whether port and starboard are alike. */
    public boolean isSymmetrical() {
        return boxes.stream().allMatch(box -> box.room.sides() == Sides.BOTH);
    }
}
