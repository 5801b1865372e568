package org.garboard.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.drawing.Box;

/**
 * What is still empty inside a frame, as all the largest rectangles that fit into it; they overlap
 * each other, and each placed piece splits those it touches.
 *
 * @param area the whole
 * @param rooms the largest empty rectangles
 * @param gap kept clear round everything placed [mm]
 * @param left what is empty, with half the gap on every side [mm2]
 */
record FreeSpace(Box area, List<Box> rooms, double gap, double left) {

    FreeSpace(Box area, double gap) {
        this(area, List.of(area), gap, size(area, gap));
    }

    /** What a place takes up with half the gap on every side [mm2]. */
    static double size(Box box, double gap) {
        return (box.width() + gap) * (box.height() + gap);
    }

    /** What is left when a place is taken. */
    FreeSpace without(Box place) {
        Box taken = place.grownBy(gap);
        List<Box> rest = new ArrayList<>();
        for (Box room : rooms) {
            if (room.overlaps(taken)) {
                split(room, taken, rest);
            } else {
                rest.add(room);
            }
        }
        return new FreeSpace(area, withoutContained(rest), gap, left - inside(place));
    }

    /** What a place takes up of the area [mm2]. */
    private double inside(Box place) {
        double width = Math.min(place.right(), area.right()) - Math.max(place.left(), area.left()) + gap;
        double height = Math.min(place.top(), area.top()) - Math.max(place.bottom(), area.bottom()) + gap;
        return Math.max(0, width) * Math.max(0, height);
    }

    private static void split(Box room, Box taken, List<Box> left) {
        if (taken.left() > room.left()) {
            left.add(new Box(room.left(), room.bottom(), taken.left(), room.top()));
        }
        if (taken.right() < room.right()) {
            left.add(new Box(taken.right(), room.bottom(), room.right(), room.top()));
        }
        if (taken.bottom() > room.bottom()) {
            left.add(new Box(room.left(), room.bottom(), room.right(), taken.bottom()));
        }
        if (taken.top() < room.top()) {
            left.add(new Box(room.left(), taken.top(), room.right(), room.top()));
        }
    }

    private static List<Box> withoutContained(List<Box> boxes) {
        List<Box> kept = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            boolean contained = false;
            for (int j = 0; j < boxes.size() && !contained; j++) {
                Box other = boxes.get(j);
                contained = i != j && other.contains(boxes.get(i)) && (!boxes.get(i).contains(other) || j < i);
            }
            if (!contained) {
                kept.add(boxes.get(i));
            }
        }
        return kept;
    }

    /** Whether something of a size fits anywhere. */
    boolean holds(Box size) {
        for (Box room : rooms) {
            if (room.width() >= size.width() && room.height() >= size.height()) {
                return true;
            }
        }
        return false;
    }

    /** Where something of a size goes when a corner draws it; empty when it fits nowhere. */
    Optional<Box> nearest(Box size, Piece.Corner corner) {
        Box best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Box room : rooms) {
            if (room.width() >= size.width() && room.height() >= size.height()) {
                Box place = inCorner(room, size, corner);
                double distance = distance(place, corner);
                if (distance < least - 1e-9) {
                    least = distance;
                    best = place;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static Box inCorner(Box room, Box size, Piece.Corner corner) {
        double left = switch (corner) {
            case TOP_LEFT, BOTTOM_LEFT -> room.left();
            case TOP_RIGHT, BOTTOM_RIGHT -> room.right() - size.width();
        };
        double bottom = switch (corner) {
            case BOTTOM_LEFT, BOTTOM_RIGHT -> room.bottom();
            case TOP_LEFT, TOP_RIGHT -> room.top() - size.height();
        };
        return new Box(left, bottom, left + size.width(), bottom + size.height());
    }

    /** Sum of the ways along both edges to the corner, so that pieces line up with their neighbours. */
    private double distance(Box place, Piece.Corner corner) {
        double toLeft = place.left() - area.left();
        double toRight = area.right() - place.right();
        double toBottom = place.bottom() - area.bottom();
        double toTop = area.top() - place.top();
        return switch (corner) {
            case TOP_LEFT -> toLeft + toTop;
            case TOP_RIGHT -> toRight + toTop;
            case BOTTOM_RIGHT -> toRight + toBottom;
            case BOTTOM_LEFT -> toLeft + toBottom;
        };
    }
}
