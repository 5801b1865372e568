package org.garboard.drawing.survey;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Balloon;
import org.garboard.drawing.Point;

/**
 * Where balloons may stand beside a view: in rows above it, or above and below. A leader leaves its balloon upright and turns at
 * the gate, the same distance from the view for all of a row, so that no leader runs through another balloon. Where there are many, every
 * other balloon stands farther out and its leader comes in between two of the nearer.
 *
 * @param seats all of them, each row from left to right
 * @param radius of a balloon [mm]
 */
record Seats(List<Seat> seats, double radius) {
    /** Between neighbours [mm]. */
    private static final double CLEAR = 2;
    /** From the view to the gate, and from there to the nearer balloons [mm]. */
    private static final double STEP = 3;
    /** So many times more seats than balloons let leaders keep clear of what they pass; our choice. */
    private static final double CHOICE = 1.6;

    /** One place for a balloon. */
    record Seat(Point gate, Point centre) {
    }

    /** Where rows begin and end, and how far out they stand. */
    record Rows(double left, double right, double top, List<Double> bottom) {
    }

    /**
     * Seats for so many balloons; rows reach beyond the view where it is too short for them.
     *
     * @param height of the numbers [mm]
     * @param shift of all seats along their rows, in parts of the distance between two
     */
    static Seats of(Rows rows, int count, double height, double shift) {
        double radius = Balloon.radius(height);
        int perRow = (int) Math.ceil(CHOICE * count / (1 + rows.bottom().size()));
        double length = rows.right() - rows.left();
        boolean staggered = perRow * (2 * radius + CLEAR) > length;
        double pitch = staggered ? radius + CLEAR / 2 : 2 * radius + CLEAR;
        int fitting = Math.max(1, (int) Math.floor(length / pitch));
        int number = Math.max(fitting, perRow);
        double start = (rows.left() + rows.right()) / 2 - (number - 1) * pitch / 2 + shift * pitch;
        List<Seat> seats = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            double out = STEP + radius + (staggered && i % 2 == 1 ? 2 * radius + CLEAR / 2 : 0);
            double x = start + i * pitch;
            seats.add(new Seat(new Point(x, rows.top() + STEP), new Point(x, rows.top() + STEP + out)));
            for (double bottom : rows.bottom()) {
                seats.add(new Seat(new Point(x, bottom - STEP), new Point(x, bottom - STEP - out)));
            }
        }
        return new Seats(seats, radius);
    }
}
