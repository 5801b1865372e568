package org.garboard.cli;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.transom.TransomBracket;
import org.garboard.job.Job;

/** A transom mount in words. */
final class BracketWords {
    /** What rounding of the transom goes unsaid [m]: our choice, a bead of sealant takes it up. */
    private static final double FLAT = 0.0005;

    private BracketWords() {
    }

    static List<String> lines(TransomBracket bracket, Job job) {
        List<String> lines = new ArrayList<>();
        lines.add("Transom mount: face level, " + Lengths.mm(bracket.belowInboard()) + " below the transom's edge at the body's inboard side, "
            + Lengths.mm(bracket.belowMiddle()) + " at its middle, " + Lengths.mm(bracket.belowOutboard()) + " at its outboard side"
            + (job.particulars().skin().isEmpty() ? " (3.0 mm inboard is for laminate or wood; skin not told: below plate take 10.0 mm)" : "") + ".");
        lines.add("Body's forward end " + Lengths.mm(bracket.ahead()) + " abaft of the edge; transom rakes " + Lengths.deg(bracket.rake())
            + " (positive: top aft).");
        for (TransomBracket.ScrewPlace screw : bracket.screws()) {
            lines.add("Pilot hole " + Lengths.mm(screw.diameter()) + ": " + Lengths.mm(Math.abs(screw.across())) + (screw.across() < 0 ? " to port" : " to starboard")
                + " of the body's middle, " + Lengths.mm(screw.up()) + " up the transom from its edge there.");
        }
        lines.add("Board under the bracket " + Lengths.mm(bracket.boardWidth()) + " wide, " + Lengths.mm(bracket.board()) + " thick, its foot "
            + Lengths.mm(bracket.boardFoot()) + " over the transom's edge; hold the maker's bracket against the holes before drilling, bed every screw in sealant.");
        if (bracket.round() > FLAT) {
            lines.add("The transom is round: it stands off the board by up to " + Lengths.mm(bracket.round()) + "; bed or pack it.");
        }
        bracket.fromPropeller().ifPresent(off -> lines.add("From the propeller's axis to the body's middle: " + Lengths.mm(off) + ", level."));
        if (bracket.fromPropeller().isEmpty()) {
            lines.add("Where the propellers stand behind the transom is not told: measure from each axis to the body.");
        }
        for (TransomBracket.Neighbour near : bracket.beside()) {
            lines.add("Beside it ahead of the transom: " + near.name() + " (" + near.kind() + "), "
                + (near.gap() > 0 ? Lengths.mm(near.gap()) + " off the body's side." : "straight ahead of the body."));
        }
        return lines;
    }
}
