package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.cutout.fairing.FairingBlock;
import org.garboard.cutout.fairing.FairingCut;
import org.garboard.cutout.fairing.HeightRow;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.part.BodySeat;
import org.garboard.cutout.part.SawCut;
import org.garboard.cutout.template.Template;
import org.garboard.drawing.Scale;
import org.garboard.drawing.layout.Notes;
import org.garboard.drawing.layout.Piece;
import org.garboard.units.Angle;

/** Figures of a block for saw and bench. */
final class BlockTables {
    /** A saw's table set to less [deg] is set square; our choice. */
    private static final double TILTED_DEG = 0.2;
    private final BlockTask block;
    private final Figures figures;

    BlockTables(BlockTask block) {
        this.block = block;
        this.figures = block.task().figures();
    }

    Piece saw(List<Piece.Corner> corners) {
        SawCut saw = block.saw();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Saw", "Set to"));
        rows.add(List.of("Block lies on", block.heightsUp() ? "its face" : "its top"));
        rows.add(List.of("Table tilted, cut along the block", tilt(saw.across(), "to starboard", "to port")));
        rows.add(List.of("Packed up along the block", tilt(saw.along(), "aft", "forward")));
        // a backing block has neither nose nor tail
        boolean fairing = block.heightsUp();
        rows.add(List.of(fairing ? "Cut at the nose, on the block's middle line" : "Cut at the forward end, on the block's middle line", figures.fine(saw.nose())));
        rows.add(List.of("Cut at the stem", figures.fine(saw.middle())));
        rows.add(List.of(fairing ? "Cut at the tail, on the block's middle line" : "Cut at the after end, on the block's middle line", figures.fine(saw.tail())));
        String side = fairing ? "Cut at the widest place, " : "Cut at the edge abreast of the middle, ";
        rows.add(List.of(side + "port", figures.fine(saw.port())));
        rows.add(List.of(side + "starboard", figures.fine(saw.starboard())));
        rows.add(List.of("Then scribe off up to", figures.fine(saw.left())));
        rows.add(List.of(block.seat().filter(BodySeat::lip).isPresent() ? "Blank, height, the lip in it" : "Blank, height", saw.blank().isPresent() ? figures.fine(saw.blank().getAsDouble()) : "skin not told: NOT KNOWN"));
        if (fairing && saw.blank().isPresent()) {
            rows.add(List.of("Saw's kerf, in the blank's height", figures.fine(FairingCut.KERF)));
        }
        block.task().made().flush().ifPresent(flush -> rows.add(List.of("Block's outline", size(flush.opening().widened((block.length() - flush.opening().length()) / 2)))));
        block.seat().ifPresent(seat -> rows.add(List.of(seat.lip() ? "Lip to saw round, and its height from the cut" : "Recess for the body, and its depth from the " + (fairing ? "face" : "cut"),
                size(seat.outline()) + "; " + figures.fine(seat.depth()))));
        overBody().ifPresent(thick -> rows.add(List.of("Left over the body, round the stem", figures.fine(thick))));
        holes(rows);
        return Columns.piece("SAW CUT: heights above what the block lies on", rows, block.task().lettering(), corners);
    }

    /** Length by width and the corners' radius, or the diameter. */
    private String size(BodyOutline outline) {
        if (new Opening("", 0, outline).isRound()) {
            return "Ø" + figures.fine(outline.length());
        }
        return figures.fine(outline.length()) + " x " + figures.fine(outline.width()) + (outline.radius() > 0 ? ", R" + figures.fine(outline.radius()) : "");
    }

    /** Thickness of a backing block between stem and edge of the recess [m], where it closes the recess. */
    private Optional<Double> overBody() {
        Scale trueSize = new Scale(1);
        return block.task().made().flush().flatMap(flush -> block.task().made().solids().stream().filter(part -> part.name().equals("backing-block")).findFirst()
                .flatMap(part -> Span.at(trueSize.paper((flush.stemHole() + block.task().job().transducer().width()) / 4), block.planes().athwart(part, trueSize))))
                .map(span -> (span.high() - span.low()) / 1000);
    }

    private static String tilt(Angle angle, String positive, String negative) {
        String size = Figures.degrees(Math.abs(angle.radians()));
        return Math.abs(angle.degrees()) < 0.05 ? size : size + ", higher " + (angle.radians() > 0 ? positive : negative);
    }

    private void holes(List<List<String>> rows) {
        for (Template.RoundHole hole : block.plan().holes()) {
            double u = hole.centre().u();
            boolean stem = Math.hypot(u, hole.centre().v()) < 1e-9;
            rows.add(List.of(stem ? "Hole for the stem" : u > 0 ? "Hole for the bolt, abaft the stem" : "Hole for the pin, ahead of the stem",
                    "Ø" + figures.fine(hole.diameter()) + (stem ? "" : " at " + figures.fine(Math.abs(u)))));
        }
    }

    /** Every 25 mm; a place is told by which way from the stem it lies. */
    Piece heights(List<Piece.Corner> corners) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Row", "From the stem", "Half-breadth", "Port", "Middle", "Starboard", "Face back"));
        for (int i = 0; i < block.rows().size(); i++) {
            HeightRow row = block.rows().get(i);
            rows.add(List.of(String.valueOf(i + 1), Math.abs(row.aft()) < 1e-9 ? "at the stem" : figures.fine(Math.abs(row.aft())) + (row.aft() > 0 ? " aft" : " fwd"),
                    figures.fine(row.halfBreadth()), figures.fine(row.port()), figures.fine(row.middle()), figures.fine(row.starboard()),
                    row.back() > 0 ? figures.fine(row.back()) : "-"));
        }
        return Columns.piece("HEIGHTS ABOVE THE FACE every 25 mm, before its nose is rounded", rows, block.task().lettering(), corners);
    }

    Notes notes() {
        List<String> notes = new ArrayList<>();
        block.task().made().fairing().ifPresent(fairing -> fairing(fairing, notes));
        block.task().made().flush().ifPresent(cutout -> {
            cutout.blockThickness().ifPresent(range -> notes.add("Backing block: " + figures.fine(range.least()) + " to " + figures.fine(range.greatest())
                    + " thick once scribed to the inside of the skin."));
            cutout.seat().filter(BodySeat::lip).ifPresent(lip -> notes.add("Saw round the lip, not through it: " + size(lip.outline()) + " round the stem's hole, "
                    + figures.fine(lip.depth()) + " out of the saw's cut at the stem. Its end bears on the body, " + figures.fine(lip.bearing()) + " above what the block lies on."));
            cutout.stemNeeded().ifPresent(needed -> notes.add("Stem: " + figures.fine(needed) + " or more above the body's top."));
        });
        boolean tilted = Math.abs(block.saw().across().degrees()) >= TILTED_DEG;
        notes.add((tilted ? "One side's block does not serve the other side: the saw's tilt is turned round there. " : "") + "Mark FWD and OUTSIDE on every piece before it is cut.");
        notes.add("The cut is a plane: fit by scribing to the skin where it stands. Bedding, coat and kerf are not in these figures but where told.");
        return Notes.numbered("BLOCKS", notes);
    }

    private void fairing(FairingBlock fairing, List<String> notes) {
        notes.add("Fairing block: " + fairing.planform().words() + ", face " + figures.fine(fairing.height()) + " below the skin at the stem, level athwartships; side "
                + figures.fine(fairing.low()) + " at its lowest, " + figures.fine(fairing.high()) + " at its highest; " + figures.fine(fairing.roof()) + " left over the body.");
        notes.add("The saw's cut parts the blank: the outer block stays on the face's side, the other becomes the block inside.");
        notes.add("By hand, last of all: round the face's forward edge to a quarter ellipse, " + figures.fine(fairing.nose().height()) + " high at the nose, run out over "
                + figures.fine(fairing.nose().length()) + ".");
        fairing.stemHole().ifPresent(hole -> notes.add("Stem's hole: Ø" + figures.fine(hole.minor()) + " square to the face; where it meets the skin an ellipse "
                + figures.fine(hole.major()) + " long. Drill it through the block."));
        fairing.stemNeeded().ifPresent(needed -> notes.add("Stem: " + figures.fine(needed) + " or more above the body's top."));
        fairing.core().ifPresent(core -> notes.add("Cored skin: core and inner skin out to " + figures.fine(core.filled()) + " beyond the cut and filled solid; taper to "
                + figures.fine(core.taper()) + "."));
    }
}
