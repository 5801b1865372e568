package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Hatch;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.LinearDimension;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.Spread;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;

/** The profile from starboard, bow to the right: named lines, stations, water at rest, sites. */
final class ProfileView {

    private final SheetTask task;
    private final Hull hull;
    private final HullOnPaper paper;
    private final Lettering lettering;
    private final List<Entity> shown = new ArrayList<>();

    private ProfileView(SheetTask task, Scale scale) {
        this.task = task;
        this.hull = task.hull();
        this.paper = new HullOnPaper(hull, scale);
        this.lettering = task.lettering();
    }

    static View of(SheetTask task, Scale scale, List<MarkedSite> sites) {
        return new ProfileView(task, scale).with(sites, task.figures().length(task.job().draught()));
    }

    /** For narrow paper: with the water's height in the job's unit alone. */
    static View narrow(SheetTask task, Scale scale, List<MarkedSite> sites) {
        return new ProfileView(task, scale).with(sites, task.figures().brief(task.job().draught()));
    }

    private View with(List<MarkedSite> sites, String water) {
        shown.addAll(HullAside.lines(hull, task.table(), paper, lettering.figures()));
        shown.addAll(HullAside.stations(hull, task.table(), paper, task.figures(), lettering.figures()));
        levels(water);
        sites(sites);
        LiftBand.of(task, sites).ifPresent(this::lifting);
        return ViewTitle.above("PROFILE FROM STARBOARD", "Bow right. Stations with their distance aft of " + task.table().origin() + ".",
                shown, lettering, 0);
    }

    private HullLine sheer() {
        return hull.lines().get(hull.lines().size() - 1);
    }

    /** The water from the after end to where the keel comes out of it, and both levels named before the bow. */
    private void levels(String water) {
        double h = lettering.figures();
        double draught = task.job().draught();
        double entry = entry(draught);
        double beside = paper.length() + 2;
        List<String> names = new ArrayList<>(List.of("Base line"));
        List<Double> heights = new ArrayList<>(List.of(0.0));
        if (!Double.isNaN(entry)) {
            Point to = paper.profile(entry, draught);
            shown.add(new Line(Layer.GRID, paper.profile(hull.afterEnd(), draught), to.movedBy(3 * h, 0)));
            Point mark = to.movedBy(1.5 * h, 0);
            // where the skin ends wet, its mark stands beyond the end
            beside = Math.max(beside, mark.x() + h);
            shown.add(Polyline.closed(Layer.GRID, List.of(mark, mark.movedBy(-0.6 * h, h), mark.movedBy(0.6 * h, h))));
            names.addAll(List.of(water + " up", "WL at rest"));
            heights.addAll(List.of(to.y() - 0.75 * h, to.y() + 0.75 * h));
        }
        double[] spread = Spread.apart(heights.stream().mapToDouble(y -> y - h / 2).toArray(), 1.5 * h);
        for (int i = 0; i < spread.length; i++) {
            shown.add(Text.level(Layer.TEXT, names.get(i), new Point(beside, spread[i]), h, Anchor.LEFT));
        }
    }

    /**
     * Where the keel line crosses a level forward of where it is wet; where it never does, the forward end, or the stem at
     * that level; NaN when all is dry.
     */
    private double entry(double z) {
        double forwardEnd = hull.keel().forwardEnd();
        double step = (hull.foot() - forwardEnd) / 400;
        double wet = hull.foot();
        // a stern may lift clear of the water
        while (hull.keel().z(wet) >= z) {
            wet -= step;
            if (wet < forwardEnd) {
                return Double.NaN;
            }
        }
        while (wet - step > forwardEnd && hull.keel().z(wet - step) < z) {
            wet -= step;
        }
        double dry = Math.max(forwardEnd, wet - step);
        if (hull.keel().z(dry) < z) {
            return hull.stem().map(stem -> stem.profile(z)).orElse(dry);
        }
        for (int i = 0; i < 50; i++) {
            double middle = (wet + dry) / 2;
            if (hull.keel().z(middle) < z) {
                wet = middle;
            } else {
                dry = middle;
            }
        }
        return wet;
    }

    /** A line up from each site past the sheer to its number; no number stands abaft of the after end, where the lines are named. */
    private void sites(List<MarkedSite> sites) {
        double top = Math.max(paper.profile(0, sheer().z(hull.forwardEnd())).y(),
                paper.profile(0, sheer().z(sheer().afterEnd())).y());
        double[] wanted = sites.stream().mapToDouble(marked -> paper.lengthwise(marked.site().x())).toArray();
        double[] spread = Spread.apart(wanted, 1.5 * lettering.figures(), paper.lengthwise(hull.afterEnd()) + 0.75 * lettering.figures());
        for (int i = 0; i < wanted.length; i++) {
            Point skin = paper.profile(sites.get(i).site().x(), sites.get(i).site().z());
            Point elbow = new Point(wanted[i], top + 1);
            shown.add(new Line(Layer.CENTRE, skin.movedBy(0, -2), elbow));
            shown.add(new Line(Layer.DIM, elbow, new Point(spread[i], top + 3)));
            shown.add(Text.level(Layer.DIM, sites.get(i).mark(), new Point(spread[i], top + 4),
                    lettering.figures(), Anchor.MIDDLE));
        }
    }

    /** NO SLING, NO BLOCK: a bar above the numbers of sites, ticks at the sheer, and its distances from both ends of the sheer. */
    private void lifting(LiftBand band) {
        double h = lettering.figures();
        double low = View.around("so far", shown).frame().top() + 0.6 * h;
        double row = low + 0.8 * h;
        double aft = atSheer(band.aft()).x();
        double fore = atSheer(band.fore()).x();
        List<Point> bar = List.of(new Point(aft, row - 0.4 * h), new Point(fore, row - 0.4 * h), new Point(fore, row + 0.4 * h), new Point(aft, row + 0.4 * h));
        shown.add(Polyline.closed(Layer.MARK, bar));
        shown.add(new Hatch(Layer.HATCH, List.of(bar), 45, 1));
        for (double x : new double[] {band.aft(), band.fore()}) {
            shown.add(new Line(Layer.MARK, atSheer(x), atSheer(x).movedBy(0, 2)));
        }
        // the shorter one above: its words may be wider than it
        distance(band.fore(), hull.forwardEnd(), row + 0.8 * h, row + 1.5 * h);
        distance(sheer().afterEnd(), band.aft(), row + 0.8 * h, row + 3.5 * h);
        shown.add(Text.level(Layer.TEXT, "NO SLING, NO BLOCK", new Point(Math.max(0, aft), row + 5.8 * h), h, Anchor.LEFT));
    }

    private Point atSheer(double x) {
        return paper.profile(x, sheer().z(x));
    }

    private void distance(double aft, double fore, double low, double row) {
        Point from = new Point(atSheer(aft).x(), low);
        Point to = new Point(atSheer(fore).x(), low);
        if (to.x() - from.x() > 1) {
            shown.add(new LinearDimension(LinearDimension.Direction.HORIZONTAL, from, to, new Point(0, row), task.figures().length(aft - fore),
                    lettering.figures()));
        }
    }
}
