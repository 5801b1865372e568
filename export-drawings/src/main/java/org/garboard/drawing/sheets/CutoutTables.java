package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.Transducer;
import org.garboard.drawing.layout.Notes;
import org.garboard.drawing.layout.Piece;
import org.garboard.marking.MarkedLength;
import org.garboard.marking.MarkedLength.Use;
import org.garboard.siting.Site;
import org.garboard.skin.ThicknessHere;
import org.garboard.units.Angle;

/** A hole through the skin in figures: what is cut and how closely, where, and how it stands. */
final class CutoutTables {
    private final CutTask cut;
    private final Figures figures;

    CutoutTables(CutTask cut) {
        this.cut = cut;
        this.figures = cut.figures();
    }

    Piece sizes(List<Piece.Corner> corners) {
        Transducer body = cut.task().job().transducer();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("What", "Size", "Within", "Measured"));
        row(rows, body.name() + ": length x width x height", figures.fine(body.length()) + " x " + figures.fine(body.width()) + " x " + figures.fine(body.height()), "measure it");
        cut.openings().forEach(opening -> opening(rows, opening));
        cut.inBlock().ifPresent(hole -> row(rows, "Stem's hole in the block, stem Ø" + figures.fine(body.stemDiameter()), "Ø" + figures.fine(hole), figures.upTo(Marking.OPENING)));
        if (cut.isFlush()) {
            row(rows, "Gap round the body, each side", figures.fine((cut.main().outline().length() - body.length()) / 2 - cut.sleeve()), "even all round");
            row(rows, "Face out of the skin or hollow, at most", figures.fine(cut.task().made().flush().orElseThrow().proud()), figures.within(1));
        }
        if (cut.sleeve() > 0) {
            row(rows, "Sleeve of plastic, wall", figures.fine(cut.sleeve()), "");
        }
        row(rows, "Skin, measured in the pilot hole", skin(), "tell the loft if other");
        cut.task().made().flush().flatMap(flush -> flush.blockThickness()).ifPresent(block ->
                row(rows, "Backing block, least and greatest", figures.fine(block.least()) + ", " + figures.fine(block.greatest()), "scribed"));
        row(rows, "Stem above the body's top", cut.stemNeeded().isPresent() ? figures.fine(cut.stemNeeded().getAsDouble()) + " or more" : "skin not told: NOT KNOWN", "");
        cut.core().ifPresent(core -> row(rows, "Core and inner skin out, beyond the cut; taper to", figures.fine(core.filled()) + "; " + figures.fine(core.taper()), ""));
        return Columns.piece("WHAT IS CUT", rows, cut.task().lettering(), corners);
    }

    private void opening(List<List<String>> rows, Opening opening) {
        if (opening.isRound()) {
            row(rows, "Hole " + opening.use() + (Math.abs(opening.aft()) > 0 ? ", from E " + figures.fine(Math.abs(opening.aft())) : ""),
                    "Ø" + figures.fine(opening.outline().length()), figures.upTo(Marking.OPENING));
            return;
        }
        row(rows, "Opening " + opening.use() + ": length", figures.fine(opening.outline().length()), figures.upTo(Marking.OPENING));
        row(rows, "Opening " + opening.use() + ": width", figures.fine(opening.outline().width()), figures.upTo(Marking.OPENING));
        if (opening.outline().radius() > 0) {
            row(rows, (opening.hasRoundEnds() ? "Its round ends' centres, from E " : "Its corners' centres, from E ") + corners(opening), "R" + figures.fine(opening.outline().radius()), "");
        }
    }

    /** Where a saw's pilot stands for each corner. */
    private String corners(Opening opening) {
        List<String> ways = new ArrayList<>();
        if (opening.cornersAlong() > 1e-6) {
            ways.add(figures.fine(opening.cornersAlong()) + " fwd and aft");
        }
        if (opening.cornersAcross() > 1e-6) {
            ways.add(figures.fine(opening.cornersAcross()) + " port and starboard");
        }
        return String.join(", ", ways);
    }

    private String skin() {
        Vector3D place = cut.planes().origin();
        return cut.task().job().particulars().skin().map(told -> told.on(cut.task().hull()).thicknessAt(place.getX(), place.getY()))
                .filter(ThicknessHere.Told.class::isInstance).map(ThicknessHere.Told.class::cast)
                .map(told -> figures.fine(told.largest()) + " by " + told.by()).orElse("NOT KNOWN");
    }

    Piece place(List<Piece.Corner> corners) {
        Site site = cut.task().record().advised().orElseThrow().sites().get(0);
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Place and stand", "Drawn", "Within", "Measured"));
        for (MarkedLength length : cut.task().marking().orElseThrow().lengths()) {
            if (length.use() == Use.SETS) {
                row(rows, "Tape " + MarkingTables.name(length) + ", " + MarkingTables.held(length), figures.length(length.metres()), figures.within(length.within()));
            }
        }
        row(rows, "Deadrise at E", Figures.slope(site.deadrise()), "±1.0°");
        row(rows, cut.isFlush() ? "Axis to the skin" : "Axis to the block's face", "square", "±1.0°");
        row(rows, "Axis off plumb athwart", off(cut.planes().leanToStarboard(), "starboard", "port"), "±1.0°");
        row(rows, "Axis off plumb fore and aft", off(cut.planes().leanForward(), "forward", "aft"), "±1.0°");
        row(rows, "As blocked: base line trimmed, heeled", "level, upright", "write it in");
        return Columns.piece("WHERE AND HOW IT STANDS", rows, cut.task().lettering(), corners);
    }

    private static String off(double radians, String positive, String negative) {
        String size = Figures.degrees(Math.abs(radians));
        return Math.abs(Angle.ofRadians(radians).degrees()) < 0.05 ? size : size + ", inner end to " + (radians > 0 ? positive : negative);
    }

    private static void row(List<List<String>> rows, String what, String drawn, String within) {
        rows.add(List.of(what, drawn, within, ""));
    }

    /** Common practice, no source, but for what the table gives. */
    Notes notes() {
        List<String> notes = new ArrayList<>();
        notes.add("Mark E by sheet 2, every tape within its limits. Pilot hole 6 mm at E, square to the skin; look at it from inside before anything else is cut.");
        if (cut.isFlush()) {
            notes.add("The hole is square to the skin, whatever the element's inclination: try it with a square against the skin, fore and aft and athwart.");
        } else {
            notes.add("The hole is square to the block's face, not to the skin: drill through the bored block held in its place. In the skin the stem's hole is an ellipse, "
                    + ellipse() + ".");
        }
        notes.add("Angles to plumb hold with the base line level and the boat upright: take off what she is trimmed and heeled as blocked, or go by the skin alone.");
        if (!cut.main().isRound()) {
            notes.add("Lay the template of sheet 3 on the cross. Saw the " + (cut.main().hasRoundEnds() ? "round ends" : "corners") + " from their centres, cut between them inside the line, and file to it.");
        }
        notes.add("Cut from outside, with the pilot as centre; back the skin inside so that it does not break out. Seal every cut edge with resin before bedding.");
        notes.add("Sizes are of the finished opening; " + Figures.tenths(Marking.OPENING) + " mm larger is taken up by the bedding, smaller binds. Cut file "
                + (cut.isFlush() ? "hull-cutout" : "fairing-footprint") + "-outside-up_mm_1to1.dxf: kerf and tool offset are not allowed for.");
        cut.task().made().flush().ifPresent(flush -> {
            String towards = flush.lean().towards().name().toLowerCase(Locale.ROOT);
            if (!towards.equals("nowhere")) {
                notes.add("The element leans TO " + towards.toUpperCase(Locale.ROOT) + ", towards the keel. Turned round the beam is "
                        + Figures.degrees(Math.abs(flush.lean().turnedRound().radians())) + " off plumb.");
            }
        });
        notes.add(SurfaceNote.of(cut.task()));
        return Notes.numbered("DRILLING AND CUTTING", notes);
    }

    private String ellipse() {
        return cut.task().made().fairing().flatMap(block -> block.stemHole()).map(hole -> figures.fine(hole.minor()) + " x " + figures.fine(hole.major())).orElse("none");
    }
}
