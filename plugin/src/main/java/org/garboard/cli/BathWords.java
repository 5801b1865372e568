package org.garboard.cli;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.inhull.BathWish;
import org.garboard.cutout.inhull.HullBath;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/** The bath of an in-hull transducer in words. */
final class BathWords {
    static final String SKIN_NOT_TOLD = "Skin not told: the bath is scribed to the outside of the skin, which lies at the same angles as the inside. "
        + "Measure it and write <skin> into the job.";

    private BathWords() {
    }

    static List<String> lines(HullBath bath, boolean skinTold) {
        List<String> lines = new ArrayList<>();
        lines.add("Bath: " + Lengths.mm(bath.length()) + " by " + Lengths.mm(bath.width()) + " over its walls of " + Lengths.mm(bath.wall())
            + ", plumb, brim level; wall " + Lengths.mm(bath.low()) + " at its lowest, " + Lengths.mm(bath.high()) + " at its highest.");
        lines.add("Saw cut of the ring's foot, its brim on the saw's table: " + CutoutWords.tilts(bath.saw()) + "; then scribe off up to "
            + Lengths.mm(bath.saw().left()) + ".");
        lines.add("Face level, " + Lengths.mm(bath.face()) + " above the skin at the middle, " + Lengths.mm(bath.under().least()) + " to "
            + Lengths.mm(bath.under().greatest()) + " over it; no air may stay under it.");
        lines.add("Liquid to " + Lengths.mm(bath.level()) + " above the skin at the middle, " + FixedDecimal.format(bath.litres(), 2)
            + " l, the body in it: so the face stays wet and nothing spills to " + Lengths.deg(Angle.ofDegrees(BathWish.HEEL_DEG))
            + " either way. Harmless to the laminate and slow to freeze, as the transducer's maker names it.");
        if (!skinTold) {
            lines.add(SKIN_NOT_TOLD);
        }
        lines.add("Grind paint off the skin under the bath, bond the ring with what the skin is laid up with, wear a mask for glass dust; try for leaks before the body goes in.");
        return lines;
    }
}
