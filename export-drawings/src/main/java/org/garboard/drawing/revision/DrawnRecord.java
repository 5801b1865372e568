package org.garboard.drawing.revision;

import org.garboard.hull.Hull;
import org.garboard.job.RecordedSet;
import org.garboard.offsets.HullOffsets;

/**
 * A record and the hull that it was decided on.
 *
 * @param set as the record tells it
 * @param table from which the hull is drawn
 */
public record DrawnRecord(RecordedSet set, HullOffsets table, Hull hull) {
}
