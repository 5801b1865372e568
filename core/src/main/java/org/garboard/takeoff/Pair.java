package org.garboard.takeoff;

import java.util.ArrayList;
import java.util.List;

/**
 * The same place of the hull on both sides.
 *
 * @param port index of its point to port
 * @param starboard index of its point to starboard
 */
record Pair(int port, int starboard) {

    /** Points of one mark at one station, each with its fellow. */
    static List<Pair> of(TakeOff takeOff) {
        List<Pair> pairs = new ArrayList<>();
        List<TakenPoint> points = takeOff.points();
        for (int s = 0; s < points.size(); s++) {
            TakenPoint starboard = points.get(s);
            for (int p = 0; p < points.size() && starboard.side() == Side.STARBOARD && !starboard.mark().equals(Mark.NONE); p++) {
                TakenPoint port = points.get(p);
                if (port.side() == Side.PORT && port.station() == starboard.station() && port.mark().equals(starboard.mark())) {
                    pairs.add(new Pair(p, s));
                    break;
                }
            }
        }
        return pairs;
    }
}
