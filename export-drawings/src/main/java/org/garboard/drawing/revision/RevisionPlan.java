package org.garboard.drawing.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.LinearDimension;
import org.garboard.drawing.LinearDimension.Direction;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.ClearPlace;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.sheets.FeaturesBelow;
import org.garboard.drawing.sheets.HullBelow;
import org.garboard.drawing.sheets.HullOnPaper;
import org.garboard.drawing.sheets.ViewTitle;
import org.garboard.hull.Hull;
import org.garboard.job.RecordedFigure;
import org.garboard.job.RecordedSet;
import org.garboard.job.RecordedSiting;
import org.garboard.revision.Comparison;
import org.garboard.revision.Shift;
import org.garboard.siting.MountSiting;
import org.garboard.siting.PlanPoint;
import org.garboard.siting.Region;
import org.garboard.siting.Site;

/** The bottom seen from below, bow to the right, so that starboard is up: as it is now, and dashed what was otherwise before. */
final class RevisionPlan {
    /** A shift shorter than this on paper is told in words alone [mm]. */
    private static final double SHORTEST_SHIFT = 0.2;
    private static final double BELOW = 10;

    private final RevisionTask task;
    private final Hull hull;
    private final Scale scale;
    private final HullOnPaper paper;
    private final Lettering lettering;
    private final List<Entity> shown = new ArrayList<>();

    private RevisionPlan(RevisionTask task, Scale scale) {
        this.task = task;
        this.hull = task.later().hull();
        this.scale = scale;
        this.paper = new HullOnPaper(hull, scale);
        this.lettering = task.lettering();
    }

    static View of(RevisionTask task, Scale scale) {
        RevisionPlan plan = new RevisionPlan(task, scale);
        double over = 1.5 * plan.lettering.figures();
        plan.shown.addAll(HullBelow.of(plan.hull, task.table(), plan.paper, over));
        plan.earlierHull();
        plan.features();
        int transducers = Math.max(task.earlier().set().sitings().size(), task.later().set().sitings().size());
        for (int i = 0; i < transducers; i++) {
            plan.regions(task.earlier().set(), i, Layer.HIDDEN);
            plan.regions(task.later().set(), i, Layer.MARK);
            plan.body(task.earlier().set(), i, Layer.HIDDEN);
            plan.body(task.later().set(), i, Layer.CUT);
        }
        Box box = View.around("hull", plan.shown).frame();
        plan.shown.addAll(HullBelow.directions(plan.paper, Math.min(0, box.left() + over), box.top(), plan.lettering.figures()));
        double row = box.bottom() - BELOW;
        for (int i = 0; i < transducers; i++) {
            Optional<Shift> shift = Shift.drawn(task.earlier().set(), task.later().set(), i);
            if (shift.isPresent()) {
                row = plan.dimensions(shift.get(), row);
            }
        }
        return ViewTitle.above("BOTTOM PLAN SEEN FROM BELOW: STARBOARD IS UP", "Bold and full: revision " + task.later().set().drawing().revision()
            + ". Dashed: revision " + task.earlier().set().drawing().revision() + ", where it differs.", plan.shown, plan.lettering, 0);
    }

    private void earlierHull() {
        if (!task.earlier().set().tableHash().equals(task.later().set().tableHash())) {
            shown.addAll(HullBelow.outline(task.earlier().hull(), new HullOnPaper(task.earlier().hull(), scale), paper, Layer.HIDDEN));
        }
    }

    private void features() {
        List<LaidFeature> before = task.earlier().set().features().laid();
        List<LaidFeature> after = task.later().set().features().laid();
        for (LaidFeature feature : after) {
            shown.addAll(FeaturesBelow.outlines(feature, paper, Layer.FORM));
        }
        for (LaidFeature feature : before) {
            if (after.stream().noneMatch(now -> now.sides() == feature.sides() && Comparison.covers(feature, now))) {
                shown.addAll(FeaturesBelow.outlines(feature, paper, Layer.HIDDEN));
            }
        }
    }

    /** Outlines of where the drawn mount may go. */
    private void regions(RecordedSet set, int transducer, Layer layer) {
        for (Region region : drawn(set, transducer).map(MountSiting::regions).orElse(List.of())) {
            shown.add(ring(region.outline(), 1, layer));
            if (region.sides() == Sides.BOTH && region.outline().stream().noneMatch(point -> point.y() < -1e-6)) {
                shown.add(ring(region.outline(), -1, layer));
            }
        }
    }

    private static Optional<MountSiting> drawn(RecordedSet set, int transducer) {
        if (transducer >= set.sitings().size()) {
            return Optional.empty();
        }
        RecordedSiting siting = set.sitings().get(transducer);
        return siting.mounts().stream().filter(mount -> siting.advised().equals(Optional.of(mount.mount()))).findFirst();
    }

    private Polyline ring(List<PlanPoint> outline, int side, Layer layer) {
        return Polyline.closed(layer, outline.stream().map(point -> paper.below(point.x(), side * point.y())).toList());
    }

    /** Length and width over all of the body, at its place. */
    private void body(RecordedSet set, int transducer, Layer layer) {
        Optional<Site> place = transducer < set.sitings().size() ? set.sitings().get(transducer).place() : Optional.empty();
        place.ifPresent(site -> {
            double length = scale.paper(millimetres(set, transducer, "length_mm") / 1000) / 2;
            double width = scale.paper(millimetres(set, transducer, "width_mm") / 1000) / 2;
            Point middle = paper.below(site.x(), site.y());
            shown.add(Polyline.closed(layer, List.of(middle.movedBy(-length, -width), middle.movedBy(length, -width),
                middle.movedBy(length, width), middle.movedBy(-length, width))));
        });
    }

    private static double millimetres(RecordedSet set, int transducer, String figure) {
        List<RecordedFigure> figures = set.figures().stream().filter(each -> each.name().equals(figure)
            && (each.subject().equals("transducer") || each.subject().contains(", transducer"))).toList();
        return transducer < figures.size() ? Double.parseDouble(figures.get(transducer).value()) : 0;
    }

    /** How far a place moved, along the boat in a row below the hull, and across it beyond an end of it or ahead of the place; the next row. */
    private double dimensions(Shift shift, double row) {
        if (shift.before().isEmpty() || shift.after().isEmpty()) {
            return row;
        }
        Point from = paper.below(shift.before().get().x(), shift.before().get().y());
        Point to = paper.below(shift.after().get().x(), shift.after().get().y());
        double next = row;
        if (Math.abs(to.x() - from.x()) > SHORTEST_SHIFT) {
            shown.add(new LinearDimension(Direction.HORIZONTAL, from, to, new Point(0, row),
                task.figures().length(Math.abs(shift.aft())) + (shift.aft() > 0 ? " aft" : " forward"), lettering.figures()));
            next -= 2.2 * lettering.figures();
        }
        if (Math.abs(to.y() - from.y()) > SHORTEST_SHIFT) {
            String words = task.figures().length(Math.abs(shift.toStarboard())) + (shift.toStarboard() > 0 ? " to starboard" : " to port");
            double h = lettering.figures();
            // where no place is clear of words the table tells it alone
            ClearPlace.clearAmong(Stream.of(paper.length() + 8 * h, -6 * h, Math.max(from.x(), to.x()) + 4 * h, Math.min(from.x(), to.x()) - 4 * h)
                .map(at -> List.<Entity>of(new LinearDimension(Direction.VERTICAL, from, to, new Point(at, 0), words, h))).toList(), shown)
                .ifPresent(shown::addAll);
        }
        return next;
    }
}
