package org.garboard.inside;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The inside of a boat, as far as the yard tells.
 *
 * @param datums that rooms were measured from
 * @param rooms in the order of the job
 * @param seen stretches that were looked at
 */
public record Inside(List<InsideDatum> datums, List<Room> rooms, List<Seen> seen) {
    public Inside {
        datums = List.copyOf(datums);
        rooms = List.copyOf(rooms);
        seen = List.copyOf(seen);
        Set<String> known = new HashSet<>();
        for (InsideDatum datum : datums) {
            if (!known.add(datum.name())) {
                throw new IllegalArgumentException("two data are called " + datum.name());
            }
        }
        rooms.forEach(room -> require(known, room.datum(), room.name()));
        seen.forEach(each -> require(known, each.datum(), "a stretch looked at"));
    }

    private static void require(Set<String> known, String datum, String what) {
        if (!known.contains(datum)) {
            throw new IllegalArgumentException(what + " was measured from " + datum + ", which is not told");
        }
    }
}
