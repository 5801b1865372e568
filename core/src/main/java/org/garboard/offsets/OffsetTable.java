package org.garboard.offsets;

import java.util.List;

/**
 * A table of offsets as it was printed, in metres.
 *
 * @param title the boat, as the heading names it
 * @param surface the surface it is drawn to
 * @param leastCount the smallest step of its notation [m]: 1/8 in, 1 mm, the last decimal
 * @param stations by rising x
 * @param lines the rows of both blocks, in the order of the file
 */
public record OffsetTable(String title, SkinSurface surface, double leastCount,
                          List<Station> stations, List<TableLine> lines) {
    public OffsetTable {
        stations = List.copyOf(stations);
        lines = List.copyOf(lines);
    }

    /** Where x is measured from: "station 0", or whichever stands there. */
    public String origin() {
        return stations.stream().filter(station -> station.x() == 0).findFirst()
            .map(station -> "station " + station.name()).orElse("the origin");
    }
}
