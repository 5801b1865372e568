package org.garboard.craft;

import java.util.ArrayList;
import java.util.List;
import org.garboard.hull.Hull;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.StrakeEdges;
import org.garboard.units.FixedDecimal;

/**
 * A place where the inner edge of a lifting strake, where its face should leave the skin, does not lie on the skin as drawn.
 *
 * @param x of the place [m]
 * @param off the edge's height above the skin [m]; NaN where there is no skin
 */
public record StrakeOffSkin(String strake, double x, double off) {
    /** A strake's edge is read off a rounded corner; farther off than this a cell is wrong [m]. Our choice. */
    private static final double ALLOWED = 0.005;
    private static final double LEAST_COUNTS = 2;

    /** Strake by strake, from forward aft. */
    public static List<StrakeOffSkin> of(HullOffsets offsets, Hull hull) {
        double allowed = Math.max(ALLOWED, LEAST_COUNTS * offsets.leastCount());
        List<StrakeOffSkin> found = new ArrayList<>();
        for (StrakeEdges strake : offsets.strakes()) {
            for (StrakeEdges.Cut cut : strake.cuts()) {
                double off = cut.innerZ() - hull.height(cut.x(), cut.innerY());
                if (!(Math.abs(off) <= allowed)) {
                    found.add(new StrakeOffSkin(strake.name(), cut.x(), off));
                }
            }
        }
        return List.copyOf(found);
    }

    /** A whole sentence for sheets and tables. */
    public String words() {
        String place = strake + ": its inner edge at x = " + FixedDecimal.format(x, 3) + " m ";
        return off == off ? place + "lies " + FixedDecimal.format(1000 * Math.abs(off), 1) + " mm " + (off < 0 ? "below" : "above")
            + " the skin as drawn; compare its cells with the bottom beside it." : place + "has no skin; see whether its cells are right.";
    }
}
