package org.garboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamException;
import org.garboard.answer.PlaceWords;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.View;
import org.garboard.drawing.graph.Curve;
import org.garboard.drawing.graph.Graph;
import org.garboard.drawing.graph.Reading;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.sheets.ViewTitle;
import org.garboard.hull.Hull;
import org.garboard.mount.water.WaterAtSpeed;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/** How she lies to the water at each of her speeds, and how thick the slow water is along the bottom; as pictures and as figures. */
final class RunningSection {
    private static final Lettering LETTERING = new Lettering(2.5, 2.5, 2.5);
    private static final double WIDTH = 75;
    private static final double HEIGHT = 40;
    /** Places along the bottom at which the layer is drawn: our choice. */
    private static final int PLACES = 120;
    /** Lines that differ in grey: broad, thin, dashed, chained. */
    private static final List<Layer> PENS = List.of(Layer.HULL, Layer.MARK, Layer.HIDDEN, Layer.CENTRE, Layer.ADJACENT, Layer.SECTION);

    private final ReportTask task;
    private final Hull hull;
    private final List<WaterAtSpeed> speeds;

    RunningSection(ReportTask task) {
        this.task = task;
        this.hull = task.hull();
        this.speeds = task.speeds();
    }

    void write(Html page) throws XMLStreamException {
        page.start("section", "aria-labelledby", "running").words("h2", "How she runs", "id", "running");
        if (speeds.isEmpty()) {
            page.words("p", "NOT KNOWN: the job does not tell her drive, weights and speeds, or too little of them. Nothing that hangs on her running was judged.");
        } else {
            trims(page);
            for (int k = 0; k < task.all().size(); k++) {
                layer(page, task.all().get(k), k == 0 ? "layer" : "layer-" + (k + 1));
            }
        }
        page.end();
    }

    private void trims(Html page) throws XMLStreamException {
        List<Curve> bars = speeds.stream().filter(each -> !each.trims().isEmpty()).map(this::bar).toList();
        if (!bars.isEmpty()) {
            View view = ViewTitle.above("TRIM [degrees, bow up]", "against speed in knots", Graph.of(WIDTH, HEIGHT, LETTERING, fastest(), bars), LETTERING, 0);
            page.figure(view, "trim", "Attitude: trim against speed", "A bar for each speed, from the least trim of the band to the most; the figures stand in the table below.",
                "Trim of the base line at each speed of the job, from the least to the most over the band of load and trim that is known.");
        }
        page.startTable("Attitude at each speed", "Speed", "Least trim", "Most trim", "NOT KNOWN");
        for (WaterAtSpeed each : speeds) {
            List<Double> trims = degrees(each);
            page.row(each.words(), List.of(trims.isEmpty() ? "NOT KNOWN" : figure(trims.get(0)) + "°",
                trims.isEmpty() ? "NOT KNOWN" : figure(trims.get(trims.size() - 1)) + "°", each.missing().isEmpty() ? "-" : each.missing()));
        }
        page.endTable();
    }

    private double fastest() {
        return speeds.get(speeds.size() - 1).knots();
    }

    private static List<Double> degrees(WaterAtSpeed at) {
        return at.trims().stream().map(Angle::degrees).sorted().toList();
    }

    /** Like an upright I. */
    private Curve bar(WaterAtSpeed at) {
        List<Double> trims = degrees(at);
        double least = trims.get(0);
        double most = trims.get(trims.size() - 1);
        double half = fastest() / 100;
        double x = at.knots();
        List<Reading> bar = new ArrayList<>(List.of(new Reading(x - half, least), new Reading(x + half, least), Reading.NONE,
            new Reading(x - half, most), new Reading(x + half, most), Reading.NONE));
        if (most - least > 1e-6) {
            bar.addAll(List.of(new Reading(x, least), new Reading(x, most)));
        }
        return new Curve("", Layer.HULL, bar);
    }

    /** Along the buttock of the site: of the advised mount, else of the first that has any. */
    private void layer(Html page, Reported one, String id) throws XMLStreamException {
        List<MountSiting> sitings = Stream.concat(one.decided().advised().stream(), one.decided().sitings().stream()).toList();
        Site site = sitings.stream().flatMap(siting -> Stream.concat(siting.sites().stream(), siting.nearest().stream())).findFirst().orElse(null);
        if (site == null) {
            return;
        }
        String where = new PlaceWords(one.decided().job().drawing().units(), task.table().origin()).place(site);
        List<Curve> curves = new ArrayList<>();
        for (int k = 0; k < speeds.size(); k++) {
            curves.add(along(speeds.get(k), site.y(), PENS.get(k % PENS.size())));
        }
        if (curves.stream().anyMatch(curve -> curve.readings().stream().anyMatch(reading -> !Double.isNaN(reading.value())))) {
            double length = hull.afterEnd() - hull.forwardEnd();
            List<Entity> drawn = Graph.of(WIDTH, HEIGHT, LETTERING, length, curves, hull.afterEnd() - site.x());
            View view = ViewTitle.above("BOUNDARY LAYER [mm]", "against metres ahead of the after end, bow to the right. Upright: the site", drawn, LETTERING, 0);
            page.figure(view, id, Report.of("Boundary layer along the bottom", task, one),
                "A line for each speed, thickest at the after end, from where the water begins to run along the bottom; the figures at the site stand in the table below.",
                "Thickness of the slow water next to the skin along the buttock of the site, the most of the band at each speed. A line begins where water meets the bottom.");
        }
        page.startTable(Report.of("Boundary layer at the site", task, one), "Speed", "Thickness");
        for (WaterAtSpeed each : speeds) {
            double thick = each.thickest(site.x(), site.y());
            page.row(each.words(), List.of(Double.isNaN(thick) ? "NOT KNOWN, or no water along the bottom there" : figure(thick * 1000) + " mm"));
        }
        page.endTable();
        page.words("p", "The site: " + where + ".");
    }

    private Curve along(WaterAtSpeed at, double y, Layer pen) {
        List<Reading> readings = DoubleStream.iterate(PLACES, k -> k - 1).limit(PLACES + 1).map(k -> hull.afterEnd() - (hull.afterEnd() - hull.forwardEnd()) * k / PLACES)
            .mapToObj(x -> new Reading(hull.afterEnd() - x, at.thickest(x, y) * 1000)).toList();
        return new Curve(FixedDecimal.format(at.knots(), 0) + " kn", pen, readings);
    }

    private static String figure(double value) {
        return FixedDecimal.format(value, 1);
    }
}
