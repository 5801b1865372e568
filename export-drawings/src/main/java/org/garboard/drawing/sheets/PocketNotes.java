package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketDetails;
import org.garboard.drawing.layout.Notes;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.mount.pocket.Walls;
import org.garboard.units.FixedDecimal;

/** What a reader of the pocket sheet must know of its figures, and what its cautions add to the usual. */
final class PocketNotes {

    private PocketNotes() {
    }

    static Notes of(SheetTask task, Pocket pocket) {
        List<String> notes = new ArrayList<>(List.of(
                pocket.site().getY() == 0
                        ? "Depths run from the keel line, square to the floor: lay a straightedge along the keel over the opening."
                        : "Depths run from the skin as it was at the pocket's middle, square to the floor: lay a straightedge fore and aft over the opening.",
                walls(task.figures(), pocket)));
        notes.addAll(lines(task.figures(), pocket));
        screws(task.figures(), pocket).ifPresent(notes::add);
        notes.add("Cut file pocket-outside-up_mm_1to1.dxf: true millimetres, origin in the middle of the pocket" + (pocket.site().getY() == 0 ? " on the keel line" : "")
                + ", bow to +x, starboard to +y, outside up. Its ticks are the marks 1 to 4 of sheet 2, corners of the finished edge; diagonals are between them. Kerf and tool offset are not allowed for. "
                + flattening(pocket.developmentStretch() * 1000));
        notes.add(SurfaceNote.of(task));
        notes.addAll(task.table().remarks());
        return Notes.numbered("NOTES", notes);
    }

    private static String walls(Figures figures, Pocket pocket) {
        PocketDetails details = pocket.details();
        Walls walls = details.make().walls();
        return "Finished outside faces. Walls lean out " + Figures.degrees(walls.draft().radians()) + "; R" + figures.fine(walls.floorRadius())
                + " at the floor, R" + figures.fine(walls.edgeRadius()) + " at the edge" + walls.rebate().map(rebate -> "; rebate "
                + figures.fine(rebate.width()) + " wide, " + figures.fine(rebate.depth()) + " above the face").orElse("")
                + ". Gap at the face " + figures.fine(details.gapAtFace()) + ": bedding, lean and radii."
                + (pocket.rampRatio() > 0 ? " Ramps run out tangent to the skin, at their steepest " + Figures.degrees(details.steepest().radians())
                + " to it." : "") + " Face to skin: within " + figures.fine(details.tolerance()) + ", surface, body and paint added up.";
    }

    private static Optional<String> screws(Figures figures, Pocket pocket) {
        return pocket.details().make().walls().rebate().flatMap(rebate -> rebate.screws().map(screws -> {
            long holes = pocket.templates().stream().mapToLong(template -> template.holes().size()).sum();
            return holes + " holes Ø" + figures.fine(screws.hole()) + " for the flange's screws along the middle of the ledge, " + figures.bench(screws.apart())
                    + " apart at most, " + figures.fine(rebate.width() / 2) + " from its edges: template flange-drilling. They end in the laminate: none goes through.";
        }));
    }

    /** What is cut, and what it takes away. */
    private static List<String> lines(Figures figures, Pocket pocket) {
        PocketDetails details = pocket.details();
        PocketMake make = details.make();
        List<String> lines = new ArrayList<>();
        if (details.outlineOnly()) {
            lines.add("Metal or planked skin: outline only. How it is built in is the work of whoever answers for the structure.");
        } else if (make.into() == PocketMake.Into.NEW_MOLD) {
            lines.add("New mold: the outline is the former's on the mold. Laminate " + thick(figures, details) + ", built inward. Least draft of the former "
                    + Figures.degrees(details.leastDraft().radians()) + ".");
        } else if (details.hullCut().isEmpty()) {
            lines.add("Existing boat: the line drawn is the FINISHED EDGE. Hull cut and end of taper are NOT KNOWN: tell the laminate.");
        } else {
            lines.add("Existing boat, three lines: finished edge; hull cut " + figures.fine(details.laminate() + make.layup().trayGap())
                    + " outside it (laminate " + figures.fine(details.laminate()) + " and gap); end of taper "
                    + figures.bench(make.layup().scarf() * details.laminate()) + " farther, 1:" + Figures.tenths(make.layup().scarf())
                    + ". The cut file cuts the hull cut and marks the finished edge; taper-end-outside-up_mm_1to1.dxf is the ring from hull cut to end of taper.");
        }
        lines.add("Lost: " + FixedDecimal.format(1000 * details.volumeLost(), 2) + " litres beside the body, " + FixedDecimal.format(1e4 * details.shellCut(), 0)
                + " cm² of shell" + (details.met().isEmpty() ? "." : "; it meets " + String.join(", ", details.met()) + "."));
        lines.add((details.cableHole() > 0 ? "Cable exit " + figures.fine(details.cableHole()) + " in the middle of the floor, square to it. " : "")
                + (details.drains() ? "All faces look down: it drains when hauled level. " : "Water STANDS in it when hauled level: drain it. ")
                + (details.trappedAir() > 0.002 ? "Air " + figures.fine(details.trappedAir()) + " high STAYS under it afloat: lead a vent up from its highest place."
                : "No air stays under it afloat and upright."));
        return lines;
    }

    private static String thick(Figures figures, PocketDetails details) {
        return details.laminate() > 0 ? figures.fine(details.laminate()) + " thick" : "NOT KNOWN";
    }

    private static String flattening(double stretchMm) {
        return stretchMm < 0.05 ? "Laying the skin flat changes no length."
                : "Laying the skin flat changes lengths by up to " + FixedDecimal.format(stretchMm, 1) + " mm.";
    }

    static Notes cautions(SheetTask task) {
        List<String> more = new ArrayList<>();
        double lean = task.job().transducer().elementInclination().radians();
        boolean level = task.record().pocket().map(pocket -> pocket.lean() == 0).orElse(true);
        if (lean > 0 && level) {
            more.add("The floor is level: the beam of an element that leans " + Figures.degrees(lean) + " points so far off to "
                    + "one side. Take a body whose element stands upright, or see under the check of the beam which way it is to look.");
        }
        more.add("Sheet 1 lists under LOOK BEFORE CUTTING what is NOT KNOWN of this place: answer each first.");
        String approvedBy = task.record().pocket().map(pocket -> pocket.details().make().approvedBy()).orElse("");
        more.add((approvedBy.isEmpty() ? "Structure: FOR CHECK, not to be cut until whoever answers for the boat's structure has approved the pocket."
                : "Structure approved by " + approvedBy + ", as the job says.") + " No keelson, floor, bearer or keel bolt may be cut.");
        return Cautions.with(task.table(), more);
    }
}
