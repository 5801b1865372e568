package org.garboard.takeoff;

import java.util.List;
import java.util.Set;
import org.garboard.offsets.OpenEnd;
import org.garboard.offsets.Station;

/**
 * A boat as it was measured in the yard, as it stands blocked.
 *
 * @param title the boat, as the heading names it
 * @param leastCount smallest step of the readings [m]
 * @param datum from which x runs
 * @param stations by rising x, as measured
 * @param points of the skin
 * @param floatMarks where it is wet when afloat
 * @param trimFrom by what the trim is known
 * @param symmetricWithin how far port and starboard may differ and their mean still be drawn [m]; 0 for what
 *     rounding alone explains
 * @param openEnds where the boat goes on beyond the end stations
 */
public record TakeOff(String title, double leastCount, Datum datum, List<Station> stations, List<TakenPoint> points,
                      List<FloatMark> floatMarks, TrimFrom trimFrom, double symmetricWithin, Set<OpenEnd> openEnds) {
    public TakeOff {
        stations = List.copyOf(stations);
        points = List.copyOf(points);
        floatMarks = List.copyOf(floatMarks);
        openEnds = Set.copyOf(openEnds);
    }
}
