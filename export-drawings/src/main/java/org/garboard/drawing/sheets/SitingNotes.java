package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import org.garboard.answer.Answer;
import org.garboard.craft.StrakeOffSkin;
import org.garboard.craft.Transducer;
import org.garboard.drawing.layout.Notes;
import org.garboard.drawing.pdf.Face;
import org.garboard.drawing.sheets.MarkedSite.Standing;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hull.UnsureStretch;
import org.garboard.job.DrawingWish;
import org.garboard.mount.Seat;
import org.garboard.mount.StepChecks;
import org.garboard.siting.MountSiting;

/** What a reader of the siting sheet must know of its figures, and what could not be done. */
final class SitingNotes {

    private final SheetTask task;
    private final List<String> notes = new ArrayList<>();

    private SitingNotes(SheetTask task) {
        this.task = task;
    }

    static Notes of(SheetTask task, List<MarkedSite> sites) {
        SitingNotes notes = new SitingNotes(task);
        notes.refusals(sites);
        notes.transducer();
        notes.figures();
        notes.notes.addAll(task.water().notes());
        LiftBand.of(task, sites).ifPresent(notes::lifting);
        notes.letters();
        return Notes.numbered("NOTES", notes.notes);
    }

    private void refusals(List<MarkedSite> sites) {
        if (task.record().isGiven()) {
            notes.add("The place of site 1 is GIVEN by the yard, not advised. " + Answer.notMet(task.record()));
        }
        if (task.record().advised().isEmpty()) {
            notes.add("NO PLACE FOUND for any mount." + (sites.stream().anyMatch(site -> site.standing() == Standing.NO_PLACE)
                    ? " Marked is where the governing check is least exceeded." : ""));
        }
        for (MountSiting siting : task.record().sitings()) {
            if (sites.stream().noneMatch(marked -> marked.siting().equals(siting))) {
                notes.add("No place at all was measured for: " + siting.mount().words() + ".");
            }
        }
        if (task.hull().stem().isPresent()) {
            notes.add("Forward of station " + task.table().stations().get(0).name() + " the skin is drawn on to the stem as the table"
                    + " gives it; no place is looked for there.");
        }
        if (!task.hull().steps().isEmpty()) {
            notes.add("Abaft of the first step (station " + task.hull().steps().get(0).name() + ") every place is NOT KNOWN: "
                    + StepChecks.BEHIND);
        }
        String refusal = task.record().refusal();
        if (!refusal.isBlank()) {
            notes.add("No pocket is drawn" + sites.stream().filter(site -> site.standing() == Standing.REFUSED).findFirst()
                    .map(site -> " for site " + site.mark()).orElse("") + ": " + refusal + ".");
        }
    }

    /** Where the boat may not be held when she is lifted or set down. */
    private void lifting(LiftBand band) {
        notes.add("NO SLING and NO BLOCK between " + task.figures().length(Math.max(0, task.fromAfterEnd(band.aft()))) + " and "
                + task.figures().length(task.fromAfterEnd(band.fore())) + " forward of " + task.afterEnd() + ", PLAN (site " + band.site().mark()
                + "): mark both at the sheer, on both sides; the profile has them from the ends of the sheer, PLAN.");
    }

    /** Letters of names that the PDF's face lacks. */
    private void letters() {
        DrawingWish wish = task.drawing();
        SortedSet<String> lacking = Face.lacking(List.of(task.boat(), task.tableFile(), task.job().transducer().name(), wish.owner(),
                wish.number(), wish.creator(), wish.approver(), wish.date(), wish.revision()));
        if (!lacking.isEmpty()) {
            notes.add("A box stands in the PDF for letters that its face lacks: " + String.join(", ", lacking) + ".");
        }
    }

    private void transducer() {
        Transducer body = task.job().transducer();
        Figures figures = task.figures();
        StringBuilder words = new StringBuilder(body.name()).append(": length ").append(figures.fine(body.length()))
                .append(", width ").append(figures.fine(body.width())).append(", height ").append(figures.fine(body.height()));
        if (body.stemDiameter() > 0) {
            words.append(", stem Ø").append(figures.fine(body.stemDiameter()));
        }
        notes.add(words.append('.').toString());
        if (body.elementInclination().radians() > 0) {
            boolean pocket = task.record().sitings().stream().anyMatch(siting -> siting.mount().seat() == Seat.ATHWART_KEEL);
            notes.add("The element leans " + Figures.degrees(body.elementInclination().radians())
                    + " inside its housing, TOWARDS THE KEEL; turned round, the error doubles. The hole stays square to the skin."
                    + (pocket ? " In a level keel pocket the beam points so far off to one side." : ""));
        }
    }

    private void figures() {
        notes.add("SKIN: tape bent along the skin, pressed into hollows. TAUT: tape drawn tight, off the skin where it bridges a hollow, as on sheet 2. PLAN: level, along the base line or square to it. STRAIGHT: tape drawn tight.");
        notes.add("Breadths over BOTH sides, STRAIGHT, by the " + task.table().word() + ": " + breadths()
                + " They prove an end of the " + task.table().word() + " on the boat, they do not find it: see sheet 2.");
        notes.add("Stop where tapes from both ends disagree by twice the ±, or the deadrise by more than 1.0°: the place is "
                + "then NOT KNOWN.");
        notes.add(SurfaceNote.of(task));
        notes.addAll(task.table().remarks());
        UnsureStretch.of(task.hull()).forEach(stretch -> notes.add(stretch.words()));
        StrakeOffSkin.of(task.table(), task.hull()).forEach(strake -> notes.add(strake.words()));
    }

    /** What tells the ends of the table on the boat, which the table does not place. */
    private String breadths() {
        Hull hull = task.hull();
        String aft = breadths(task.afterEnd(), hull.foot());
        boolean drawn = hull.firstSection() <= 0 && hull.foot() > 0;
        return (drawn ? aft + "; " + breadths(task.forwardDatum(), 0) : aft) + ".";
    }

    /** The table's half is told as a whole: a man who reads "half" sets the figure out to each side. */
    static String overBothSides(String line) {
        return line.toLowerCase(Locale.ROOT).replaceFirst("^half[- ]?(?=siding)", "");
    }

    private String breadths(String datum, double x) {
        List<String> lines = new ArrayList<>();
        for (HullLine line : task.hull().lines()) {
            if (line.y(x) > 0) {
                lines.add(overBothSides(line.name()) + " " + task.figures().length(2 * line.y(x)));
            }
        }
        return datum + " " + String.join(", ", lines);
    }
}
