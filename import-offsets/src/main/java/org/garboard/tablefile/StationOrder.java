package org.garboard.tablefile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.garboard.offsets.Station;

/**
 * The stations from forward aft, and where in the file each of them stands.
 *
 * @param stations by rising x
 * @param reversed whether the file has them from aft forward
 * @param frame how distances in the file become x
 */
record StationOrder(List<Station> stations, boolean reversed, ToldFrame frame) {
    StationOrder {
        stations = List.copyOf(stations);
    }

    /** In the order of the file, a metre apart. */
    static StationOrder unknown(Layout layout) {
        double[] x = new double[layout.stations().size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = i;
        }
        return of(layout, x, ToldFrame.UNKNOWN);
    }

    /** @param told distance of each station in the order of the file [m] */
    static StationOrder of(Layout layout, double[] told, ToldFrame frame) {
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < told.length; i++) {
            stations.add(new Station(layout.stations().get(i).text(), frame.x(told[i])));
        }
        return new StationOrder(stations, false, frame);
    }

    /** The same from the last in the file to the first. */
    StationOrder turned() {
        List<Station> turned = new ArrayList<>(stations);
        Collections.reverse(turned);
        return new StationOrder(turned, !reversed, frame);
    }

    /** From a station's place in the file to its place in the table, or back. */
    int index(int i) {
        return reversed ? stations.size() - 1 - i : i;
    }
}
