package org.garboard.cli;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketDetails;
import org.garboard.mount.pocket.PocketMake.Into;
import org.garboard.units.FixedDecimal;

/** A keel pocket in words: what it takes, what it meets, what is not known. */
final class PocketWords {
    /** Air no higher than this runs out when she rolls [m]: our choice. */
    private static final double AIR = 0.002;

    private PocketWords() {
    }

    static List<String> lines(Pocket pocket) {
        PocketDetails details = pocket.details();
        List<String> lines = new ArrayList<>();
        lines.add("Pocket: loses " + FixedDecimal.format(1000 * details.volumeLost(), 2) + " l of buoyancy beside the body; "
            + FixedDecimal.format(1e4 * details.shellCut(), 0) + " cm2 of shell are cut out.");
        if (!details.met().isEmpty()) {
            lines.add("Behind the pocket: " + String.join(", ", details.met()) + "; what carries their load is to be approved.");
        }
        if (details.trappedAir() > AIR) {
            lines.add("Air " + Lengths.mm(details.trappedAir()) + " high stays under the pocket afloat, highest at x = "
                + Lengths.mm(details.crest().getX()) + ", y = " + Lengths.mm(details.crest().getY()) + ": lead a vent up from there.");
        }
        if (!details.drains()) {
            lines.add("Water stands in the pocket when she is hauled level, and may freeze: drain it.");
        }
        details.notMade().forEach(words -> lines.add("No solid of " + words + "."));
        if (details.outlineOnly()) {
            lines.add("Metal or planked skin: the outline alone is drawn, no laminate and no former.");
        } else if (details.make().into() == Into.EXISTING_BOAT && details.hullCut().isEmpty()) {
            lines.add("Hull cut and taper are NOT KNOWN: tell the pocket's laminate, or the skin.");
        }
        if (details.make().approvedBy().isEmpty()) {
            lines.add("FOR CHECK: nobody is named who approved the structure.");
        }
        return lines;
    }
}
