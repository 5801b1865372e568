package org.garboard.drawing.sheets;

import org.garboard.drawing.View;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.Paper;
import org.garboard.hull.Hull;
import org.garboard.marking.MarkingOut;
import org.garboard.marking.MarkingPlan;
import org.garboard.mount.Seat;
import org.garboard.siting.Site;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.made.PartsMade;
import org.garboard.cutout.template.Template;
import org.garboard.job.DrawingWish;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
import org.garboard.offsets.HullOffsets;

/**
 * Everything the sheets of one job are drawn from.
 *
 * @param made parts of the advised mount
 * @param water that its places were judged by
 * @param paper it is drawn on, the job's or another that is tried
 * @param lettering of the paper, or smaller
 * @param marking how the advised place is marked out; empty where no place is advised
 */
record SheetTask(SitingRecord record, PartsMade made, SitingWater water, HullOffsets table, Hull hull, Provenance provenance, Paper paper,
                 Lettering lettering, Optional<MarkingOut> marking) implements SheetSubject<SheetTask> {

    /** Marks on the keel line stand whole numbers of these apart [m]: 100 mm, 6 in. */
    private static final double METRIC_ARM = 0.1;
    private static final double FEET_ARM = 0.1524;
    private static final String STATUS = "FOR CHECK - not to be cut until the check measurements are signed";
    private static final String GIVEN = "PLACE GIVEN BY THE YARD - ";

    /** Where nothing but a pocket is made. */
    SheetTask(SitingRecord record, HullOffsets table, Hull hull, Provenance provenance) {
        this(record, PartsMade.NONE, SitingWater.NONE, table, hull, provenance);
    }

    SheetTask(SitingRecord record, PartsMade made, SitingWater water, HullOffsets table, Hull hull, Provenance provenance) {
        this(record, made, water, table, hull, provenance, SheetSubject.paper(record.job().drawing()),
                Lettering.forPaper(SheetSubject.paper(record.job().drawing())), marking(record, table, hull));
    }

    @Override
    public SheetTask on(Paper other) {
        return new SheetTask(record, made, water, table, hull, provenance, other, Lettering.forPaper(other), marking);
    }

    @Override
    public SheetTask lettered(Lettering smaller) {
        return new SheetTask(record, made, water, table, hull, provenance, paper, smaller, marking);
    }

    /** Flat outlines of all that is made, but the pocket's opening. */
    List<Template> templates() {
        return Stream.concat(made.templates().stream(), record.pocket().stream().flatMap(pocket -> pocket.templates().stream())).toList();
    }

    Job job() {
        return record.job();
    }

    @Override
    public DrawingWish drawing() {
        return job().drawing();
    }

    @Override
    public String tableFile() {
        return job().tableFile();
    }

    /** The datum aft. */
    String afterEnd() {
        return new Datums(table, hull).afterEnd();
    }

    /** The datum forward. */
    String forwardDatum() {
        return new Datums(table, hull).forward();
    }

    /** Distance of a place forward of the datum aft [m]. */
    double fromAfterEnd(double x) {
        return new Datums(table, hull).fromAfterEnd(x);
    }

    private static Optional<MarkingOut> marking(SitingRecord record, HullOffsets table, Hull hull) {
        double round = record.job().drawing().units() == DrawingWish.Units.MILLIMETRES ? METRIC_ARM : FEET_ARM;
        return record.advised().map(advised -> advisedIsPocket(record)
                ? MarkingPlan.of(hull, table, record.pocket().orElseThrow(), round)
                : MarkingPlan.of(hull, table, place(advised.sites().get(0)), round));
    }

    /** Whether what is advised is the pocket that is drawn. */
    boolean advisedIsPocket() {
        return advisedIsPocket(record);
    }

    private static boolean advisedIsPocket(SitingRecord record) {
        return record.advised().filter(advised -> advised.mount().seat() == Seat.ATHWART_KEEL).isPresent() && record.pocket().isPresent();
    }

    private static Vector3D place(Site site) {
        return Vector3D.of(site.x(), site.y(), site.z());
    }

    @Override
    public String boat() {
        return job().hullNumber().isBlank() ? job().boat() : job().boat() + ", hull no. " + job().hullNumber();
    }

    /**
     * A view from the side and the view from below, lengths in line. The view from below stands under the
     * other in third angle projection, over it in first (ISO 5456-2), as the title block's symbol says.
     */
    Cluster inLine(View fromSide, View fromBelow) {
        boolean firstAngle = job().drawing().projection() == DrawingWish.Projection.FIRST_ANGLE;
        View upper = firstAngle ? fromBelow : fromSide;
        View lower = firstAngle ? fromSide : fromBelow;
        return Cluster.inLine(upper, lower, lettering.gap());
    }

    @Override
    public String sheets() {
        return "set: 1 siting" + (record.advised().isPresent() ? ", 2 marking" : "") + (record.pocket().isPresent() ? ", 4 pocket" : "") + (CutTask.isWanted(made) ? ", 4 cutout" : "") + (BlockTask.isWanted(made) ? ", 5 blocks" : "") + (record.advised().isPresent() ? ", 7 check" : "");
    }

    @Override
    public String status() {
        if (!record.isGiven()) {
            return STATUS;
        }
        int open = record.notMet().size();
        return GIVEN + (open == 0 ? "not to be cut until the checks are signed"
            : "NOT TO BE CUT, " + (open == 1 ? "1 check is" : open + " checks are") + " NOT MET, see sheet 1");
    }
}
