package org.garboard.slips;

import java.util.List;
import org.garboard.slips.pen.SlipKind;

/**
 * A value of the table that is likely wrong, and the value that a slip of the pen may have spoilt.
 *
 * @param line index of the table's row
 * @param station index of the station
 * @param written what stands there [m]
 * @param proposed what the slip undone gives [m]; exact, for the notation allows it
 * @param proposal the same as the table would write it
 * @param kind of slip
 * @param doubts why it is less sure; empty if it is sure
 */
public record Slip(int line, int station, double written, double proposed, String proposal, SlipKind kind,
                   List<Doubt> doubts) {
    public Slip {
        doubts = List.copyOf(doubts);
    }

    /** How much too large the written value is [m]; negative if it is too small. */
    public double size() {
        return written - proposed;
    }

    public boolean isSure() {
        return doubts.isEmpty();
    }
}
