package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.garboard.drawing.Balloon;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.LetterWidths;
import org.garboard.drawing.Line;
import org.garboard.drawing.LinearDimension;
import org.garboard.drawing.Point;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.NameColumn;
import org.garboard.drawing.layout.Spread;
import org.garboard.drawing.water.WaterBelow;
import org.garboard.hull.Hull;
import org.garboard.offsets.Station;
import org.garboard.siting.Site;

/** The bottom seen from below, bow to the right, so that starboard is up: regions and sites, and the water that they are judged by. */
final class BottomPlanView {

    private final SheetTask task;
    private final Hull hull;
    private final Scale scale;
    private final HullOnPaper paper;
    private final Lettering lettering;
    private final double halfBeam;
    private final FeaturesBelow.Names names;
    private final FeaturesBelow features;
    private final List<Entity> shown = new ArrayList<>();

    private BottomPlanView(SheetTask task, Scale scale, List<MarkedSite> sites, FeaturesBelow.Names names) {
        this.task = task;
        this.hull = task.hull();
        this.scale = scale;
        this.paper = new HullOnPaper(hull, scale);
        this.lettering = task.lettering();
        this.halfBeam = scale.paper(task.table().skinStations().stream().mapToDouble(Station::x)
                .map(x -> hull.lines().stream().mapToDouble(line -> line.y(x)).max().orElse(0)).max().orElse(0));
        this.names = names;
        this.features = FeaturesBelow.of(task.record().features().laid(), paper, lettering.figures(), halfBeam,
                down(sites), names);
    }

    /** With the names of what is on the bottom ahead of the bow. */
    static View of(SheetTask task, Scale scale, List<MarkedSite> sites) {
        return new BottomPlanView(task, scale, sites, FeaturesBelow.Names.AHEAD).with(sites);
    }

    /** For narrow paper: with those names below the plan, and figures alone at its dimensions. */
    static View narrow(SheetTask task, Scale scale, List<MarkedSite> sites) {
        return new BottomPlanView(task, scale, sites, FeaturesBelow.Names.BELOW).with(sites);
    }

    /** Where the distances of the first site that serves run down. */
    private double[] down(List<MarkedSite> sites) {
        return sites.stream().filter(MarkedSite::serves).findFirst()
                .map(first -> DoubleStream.of(hull.foot(), first.site().x(), 0).map(paper::lengthwise).sorted().toArray()).orElse(new double[0]);
    }

    private View with(List<MarkedSite> sites) {
        shown.addAll(HullBelow.of(hull, task.table(), paper, 1.5 * lettering.figures()));
        shown.addAll(RegionHatch.below(task.record().sitings(), paper));
        shown.addAll(features.shown());
        shown.addAll(HullBelow.directions(paper, water(), halfBeam, lettering.figures()));
        above(sites);
        sites.stream().filter(MarkedSite::serves).findFirst().ifPresent(this::distances);
        shown.addAll(features.listed(0, View.around("so far", shown).frame().bottom() - 2 * lettering.figures()));
        return ViewTitle.above("BOTTOM PLAN SEEN FROM BELOW: STARBOARD IS UP", "", shown, lettering, 0);
    }

    /** Stagnation lines and wakes, whose names stand in a column abaft of all; how far that reaches to the left [mm]. */
    private double water() {
        WaterBelow water = new WaterBelow(paper::below);
        task.water().draw(water, features::called);
        shown.addAll(water.shown());
        List<Entity> column = NameColumn.leftOf(features.afterEnd() - 2 * lettering.figures(), features.lowest(), water.names(), lettering.tables());
        shown.addAll(column);
        return column.stream().mapToDouble(entity -> entity.bounds().left()).reduce(features.afterEnd(), Math::min);
    }

    /** Numbers of sites and speeds of stagnation lines stand above the starboard sheer, each over its place as nearly as may be. */
    private void above(List<MarkedSite> sites) {
        double radius = Balloon.radius(lettering.figures());
        List<NameColumn.Name> speeds = task.water().speeds(paper);
        double widest = speeds.stream().mapToDouble(speed -> LetterWidths.extent(speed.words(), lettering.figures())).reduce(2 * radius, Math::max);
        double[] spread = Spread.apart(DoubleStream.concat(sites.stream().mapToDouble(marked -> paper.lengthwise(marked.site().x()) + radius),
            speeds.stream().mapToDouble(speed -> speed.end().x())).toArray(), widest + 2);
        double row = halfBeam + radius + 3;
        for (int i = 0; i < spread.length; i++) {
            Point place = new Point(spread[i], row);
            if (i < sites.size()) {
                Site site = sites.get(i).site();
                shown.add(new Balloon(place, sites.get(i).mark(), lettering.figures(), List.of(paper.below(site.x(), site.y()))));
            } else {
                NameColumn.Name speed = speeds.get(i - sites.size());
                shown.add(Text.centred(Layer.TEXT, speed.words(), place, lettering.figures(), 0));
                shown.add(new Line(Layer.DIM, place.movedBy(0, -lettering.figures()), speed.end()));
            }
        }
    }

    /** Where the first site that serves lies, from either end of the table; two figures, a row each. */
    private void distances(MarkedSite first) {
        Site site = first.site();
        double top = features.lowest() - 10;
        double pitch = 2.6 * lettering.figures();
        Point place = paper.below(site.x(), site.y());
        Point aft = paper.below(hull.foot(), -HullBelow.outermost(hull, hull.foot()));
        Point zero = new Point(paper.lengthwise(0), -scale.paper(zeroBeam()));
        distance(zero, place, top, task.figures().length(Math.abs(site.x())) + from((site.x() < 0 ? " forward of " : " from ") + task.forwardDatum()));
        distance(aft, place, top - pitch, task.figures().length(task.fromAfterEnd(site.x())) + from(" from " + task.afterEnd()));
    }

    /** On narrow paper the lines alone tell from where; the table of sites has the words. */
    private String from(String datum) {
        return names == FeaturesBelow.Names.AHEAD ? datum : "";
    }

    private double zeroBeam() {
        return HullBelow.outermost(hull, Math.min(hull.foot(), Math.max(hull.firstSection(), 0)));
    }

    private void distance(Point from, Point to, double row, String words) {
        if (Math.abs(from.x() - to.x()) > 1e-3) {
            shown.add(new LinearDimension(LinearDimension.Direction.HORIZONTAL, from, to, new Point(0, row),
                    words, lettering.figures()));
        }
    }
}
