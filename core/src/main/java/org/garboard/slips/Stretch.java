package org.garboard.slips;

import java.util.ArrayList;
import java.util.List;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.StationRun;

/**
 * A part of a long table that is searched by itself: cells far away say nothing of a cell.
 *
 * @param from first station
 * @param to behind the last station
 * @param judgedFrom first station whose cells are judged here
 * @param judgedTo behind the last of them
 */
record Stretch(int from, int to, int judgedFrom, int judgedTo) {
    /** Up to this many stations are taken at once; our choice. */
    private static final int WHOLE = 30;
    private static final int JUDGED = 16;
    private static final int MARGIN = 4;

    /** Stretches that together judge every station once; none goes over a step, where nothing is fair. */
    static List<Stretch> covering(OffsetTable table) {
        List<Stretch> stretches = new ArrayList<>();
        for (StationRun length : table.lengths()) {
            if (length.size() >= SlipSearch.FEWEST_STATIONS || table.lengths().size() == 1) {
                of(length.size()).forEach(each -> stretches.add(each.movedBy(length.from())));
            }
        }
        return stretches;
    }

    private Stretch movedBy(int stations) {
        return new Stretch(from + stations, to + stations, judgedFrom + stations, judgedTo + stations);
    }

    private static List<Stretch> of(int stations) {
        if (stations <= WHOLE) {
            return List.of(new Stretch(0, stations, 0, stations));
        }
        List<Stretch> stretches = new ArrayList<>();
        for (int from = 0; from < stations; from += JUDGED) {
            int to = Math.min(stations, from + JUDGED);
            stretches.add(new Stretch(Math.max(0, Math.min(from, stations - JUDGED) - MARGIN),
                    Math.min(stations, Math.max(to, JUDGED) + MARGIN), from, to));
        }
        return stretches;
    }

    OffsetTable of(OffsetTable table) {
        return table.part(new StationRun(from, to));
    }

    /** Whether a slip found here counts. */
    boolean judges(Slip slip) {
        return slip.station() + from >= judgedFrom && slip.station() + from < judgedTo;
    }

    /** The slip as the whole table counts its stations. */
    Slip inTable(Slip slip) {
        return new Slip(slip.line(), slip.station() + from, slip.written(), slip.proposed(), slip.proposal(),
                slip.kind(), slip.doubts());
    }
}
