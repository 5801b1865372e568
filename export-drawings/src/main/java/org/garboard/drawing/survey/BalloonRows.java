package org.garboard.drawing.survey;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Circle;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Leader;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;
import org.garboard.drawing.survey.MarkedSpot.Seen;
import org.garboard.drawing.survey.Seats.Seat;

/** Numbers in balloons beside a view, each with its leader: none meets another, nor a dot that is not its own. */
final class BalloonRows {
    /** Ways to shift the rows that are tried, the first that is clear serves. */
    private static final double[] SHIFTS = {0, 0.5, 0.25, 0.75};
    private static final double RING = 0.9;
    /** Lettering of ISO 3098 that is next smaller, for numbers of three signs and more. */
    private static final double SMALLER = 1 / Math.sqrt(2);

    private BalloonRows() {
    }

    /**
     * Balloons for some places.
     *
     * @param rows where they may stand
     * @param height of the numbers [mm]
     */
    static List<Entity> of(List<MarkedSpot> spots, Seats.Rows rows, double height) {
        List<Entity> drawn = new ArrayList<>();
        if (!spots.isEmpty()) {
            Seats seats = Seats.of(rows, spots.size(), height, SHIFTS[0]);
            Leaders leaders = leaders(spots, rows, height);
            for (int i = 0; i < spots.size(); i++) {
                balloon(spots.get(i), leaders.seat(i), seats.radius(), height, drawn);
            }
        }
        return drawn;
    }

    static Leaders leaders(List<MarkedSpot> spots, Seats.Rows rows, double height) {
        List<Point> places = spots.stream().map(MarkedSpot::place).toList();
        Leaders best = null;
        for (double shift : SHIFTS) {
            Leaders leaders = Leaders.between(places, Seats.of(rows, places.size(), height, shift).seats());
            if (best == null || leaders.touches() < best.touches()) {
                best = leaders;
            }
            if (best.touches() == 0) {
                break;
            }
        }
        return best;
    }

    private static void balloon(MarkedSpot spot, Seat seat, double radius, double height, List<Entity> drawn) {
        Point edge = seat.centre().towards(seat.centre().directionTo(seat.gate()), radius);
        drawn.add(new Circle(Layer.DIM, seat.centre(), radius));
        drawn.add(Text.centred(Layer.DIM, spot.number(), seat.centre(), spot.number().length() > 2 ? height * SMALLER : height, 0));
        if (spot.seen() == Seen.NEAR) {
            drawn.add(new Leader(Layer.DIM, Leader.End.DOT, List.of(spot.place(), seat.gate(), edge)));
        } else {
            drawn.add(new Circle(Layer.DIM, spot.place(), RING));
            drawn.add(new Line(Layer.DIM, spot.place().towards(spot.place().directionTo(seat.gate()), RING), seat.gate()));
            drawn.add(new Line(Layer.DIM, seat.gate(), edge));
        }
    }
}
