package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.function.BiConsumer;
import org.garboard.appendage.Keel;
import org.garboard.drawing.Balloon;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.ClearPlace;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.NameColumn;
import org.garboard.hull.Hull;
import org.garboard.hull.HullCurves;
import org.garboard.hull.HullLine;
import org.garboard.offsets.Station;
import org.garboard.offsets.StrakeEdges;
import org.garboard.siting.Site;

/**
 * The sections, looking forward: of the forward stations the starboard half, on the right, of the
 * after stations the port half, on the left; and the whole section at the first site.
 */
final class BodyPlanView {

    private static final String NAME = "BODY PLAN, LOOKING FORWARD";
    /** A title may run so wide over a narrow body plan, in letter heights. */
    private static final double PLAIN_TITLE = 31;

    /** A take-off's points stand at x of their own, nearer to their station than this by any trim of a boat on her blocks [m]. */
    private static final double SAME_STATION = 0.15;

    private final SheetTask task;
    private final Hull hull;
    private final HullOnPaper paper;
    private final Lettering lettering;
    private final List<Entity> shown = new ArrayList<>();

    private BodyPlanView(SheetTask task, Scale scale) {
        this.task = task;
        this.hull = task.hull();
        this.paper = new HullOnPaper(hull, scale);
        this.lettering = task.lettering();
    }

    /** With every station named at its sheer. */
    static View named(SheetTask task, Scale scale, List<MarkedSite> sites) {
        BodyPlanView view = new BodyPlanView(task, scale);
        view.halves(view::names);
        view.axes();
        sites.stream().findFirst().ifPresent(view::site);
        return ViewTitle.above(NAME, "Starboard right. Thin: forward stations right, after stations left, "
                + "with distance aft of " + task.table().origin() + "." + thick(sites), view.shown, view.lettering, 0);
    }

    /** For little room: stations are named in the profile alone. */
    static View plain(SheetTask task, Scale scale, List<MarkedSite> sites) {
        BodyPlanView view = new BodyPlanView(task, scale);
        view.halves((stations, side) -> { });
        view.axes();
        sites.stream().findFirst().ifPresent(view::site);
        return ViewTitle.above(NAME, "Starboard right. Stations as in the profile: forward right, after left. Level: base line, water at rest."
                + thick(sites), view.shown, view.lettering, PLAIN_TITLE * view.lettering.figures());
    }

    private static String thick(List<MarkedSite> sites) {
        return sites.isEmpty() ? "" : " Thick: at site 1.";
    }

    private void halves(BiConsumer<List<Station>, Integer> names) {
        double widest = widestStation();
        half(task.table().skinStations().stream().filter(station -> station.x() <= widest).toList(), 1, names);
        half(task.table().skinStations().stream().filter(station -> station.x() > widest).toList(), -1, names);
    }

    private void half(List<Station> stations, int side, BiConsumer<List<Station>, Integer> names) {
        stations.forEach(station -> shown.add(paper.section(Layer.GRID, station.x(), side)));
        Keel.of(task.table(), hull).ifPresent(keel ->
                stations.forEach(station -> shown.addAll(paper.cut(Layer.GRID, keel, station.x(), side))));
        for (StrakeEdges strake : task.table().strakes()) {
            strake.cuts().stream().filter(cut -> stations.stream().anyMatch(station -> Math.abs(station.x() - cut.x()) < SAME_STATION))
                    .forEach(cut -> shown.add(paper.cut(Layer.GRID, cut, side)));
        }
        if (side < 0 && !hull.endsSquare()) {
            shown.addAll(paper.drawn(Layer.GRID, new HullCurves(hull).afterEdge(), point -> paper.lookingForward(-point.getY(), point.getZ())));
        }
        names.accept(stations, side);
    }

    private HullLine sheer() {
        return hull.lines().get(hull.lines().size() - 1);
    }

    private double widestStation() {
        return task.table().skinStations().stream().map(Station::x)
                .max(Comparator.comparingDouble(x -> hull.bottomEdge().y(x))).orElse(0.0);
    }

    /** Stations named at their sheer; base line and water to port, where fewer stations are. */
    private void names(List<Station> stations, int side) {
        List<NameColumn.Name> labels = new ArrayList<>();
        for (Station station : stations) {
            labels.add(new NameColumn.Name(station.name() + ": " + task.figures().aftOfOrigin(station.x()),
                    paper.lookingForward(side * sheer().y(station.x()), sheer().z(station.x()))));
        }
        if (side < 0) {
            labels.add(new NameColumn.Name("WL at rest", new Point(-beam(), water())));
            labels.add(new NameColumn.Name("Base line", new Point(-beam(), 0)));
        }
        double column = side * (beam() + 2 * lettering.figures() + 1);
        shown.addAll(side > 0 ? NameColumn.rightOf(column, NameColumn.NO_FLOOR, labels, lettering.figures())
                : NameColumn.leftOf(column, NameColumn.NO_FLOOR, labels, lettering.figures()));
    }

    private double beam() {
        return task.table().skinStations().stream()
                .mapToDouble(station -> paper.lookingForward(widest(station), 0).x()).max().orElse(0);
    }

    private double water() {
        return paper.lookingForward(0, task.job().draught()).y();
    }

    private double widest(Station station) {
        return hull.lines().stream().mapToDouble(line -> line.y(station.x())).max().orElse(0);
    }

    private void axes() {
        double top = task.table().skinStations().stream()
                .mapToDouble(station -> paper.lookingForward(0, sheer().z(station.x())).y()).max().orElse(0);
        shown.add(new Line(Layer.CENTRE, new Point(0, -1.5 * lettering.figures()), new Point(0, top + 3)));
        shown.add(new Line(Layer.GRID, new Point(-beam(), 0), new Point(beam(), 0)));
        shown.add(new Line(Layer.GRID, new Point(-beam(), water()), new Point(beam(), water())));
    }

    private void site(MarkedSite marked) {
        Site site = marked.site();
        shown.add(paper.section(Layer.HULL, site.x(), 1));
        shown.add(paper.section(Layer.HULL, site.x(), -1));
        Keel.of(task.table(), hull).ifPresent(keel -> {
            shown.addAll(paper.cut(Layer.HULL, keel, site.x(), 1));
            shown.addAll(paper.cut(Layer.HULL, keel, site.x(), -1));
        });
        double radius = Balloon.radius(lettering.figures());
        Point skin = paper.lookingForward(site.y(), site.z());
        double aside = site.y() < 0 ? -1 : 1;
        shown.addAll(ClearPlace.among(IntStream.range(0, 8).mapToObj(step -> List.<Entity>of(new Balloon(
                new Point(skin.x() + aside * (radius + 3 - 0.5 * step * radius), -radius - 3), marked.mark(), lettering.figures(), List.of(skin)))).toList(), shown));
    }
}
