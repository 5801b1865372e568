package org.garboard.drawing.lines;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.NameColumn;
import org.garboard.drawing.layout.NameColumn.Name;
import org.garboard.drawing.sheets.StationLabels;
import org.garboard.drawing.sheets.ViewTitle;
import org.garboard.hull.Curve;
import org.garboard.hull.HullCurves;
import org.garboard.hull.HullLine;

/** The profile from starboard, bow to the right: named lines and buttocks as curves, stations and waterlines straight. */
final class LinesProfile {

    private final LinesPaper lines;
    private final String origin;
    private final double bottom;
    private final double top;
    private final List<Entity> shown = new ArrayList<>();

    private LinesProfile(LinesPaper lines, String origin) {
        this.lines = lines;
        this.origin = origin;
        this.bottom = Math.min(0, height(lines.extent().lowest()));
        this.top = height(lines.extent().highest()) + 2;
    }

    static View of(LinesPaper lines, String origin) {
        LinesProfile view = new LinesProfile(lines, origin);
        view.grid();
        view.curves();
        return ViewTitle.above("PROFILE FROM STARBOARD", "Bow right. Stations with their distance aft of " + view.origin + ".",
                view.shown, lines.lettering(), 0);
    }

    private double height(double z) {
        return lines.scale().paper(z);
    }

    private void grid() {
        List<Name> names = new ArrayList<>();
        double right = lines.length() + 2;
        level("Base line", 0, right, names);
        lines.grid().waterlines().stream().filter(waterline -> Math.abs(waterline.at()) > 1e-6)
                .forEach(waterline -> level(waterline.words(), height(waterline.at()), right, names));
        shown.addAll(NameColumn.rightOf(right + 1, bottom, names, lines.letter()));
        List<StationLabels.Label> stations = new ArrayList<>();
        for (GridLine section : lines.grid().sections()) {
            double at = lines.paper().lengthwise(section.at());
            shown.add(new Line(Layer.GRID, new Point(at, bottom), new Point(at, top)));
            stations.add(new StationLabels.Label(at, section.words()));
        }
        StationLabels.of(stations, lines.letter()).forEach(label -> shown.add(label.movedBy(0, bottom)));
    }

    private void level(String words, double y, double right, List<Name> names) {
        shown.add(new Line(Layer.GRID, new Point(0, y), new Point(right, y)));
        names.add(new Name(words, new Point(right, y)));
    }

    private void curves() {
        List<Name> names = new ArrayList<>();
        for (HullLine line : lines.hull().lines()) {
            curve(Layer.HULL, line.name(), lines.curves(line), names);
        }
        lines.keel().ifPresent(keel -> {
            shown.add(lines.paper().profile(keel));
            names.add(new Name(keel.name(), lines.paper().profile(keel.to(), keel.section(keel.to()).z())));
        });
        for (GridLine buttock : lines.grid().buttocks()) {
            curve(Layer.FORM, buttock.words(), new HullCurves(lines.hull()).buttock(buttock.at(), lines.paper().chord()), names);
        }
        shown.addAll(NameColumn.leftOf(-3, bottom, names, lines.letter()));
        shown.addAll(lines.paper().afterEndInProfile());
        shown.addAll(lines.paper().stepsInProfile());
        shown.addAll(lines.paper().foreEndInProfile());
    }

    private void curve(Layer layer, String words, List<Curve> curves, List<Name> names) {
        shown.addAll(lines.paper().drawn(layer, curves, this::place));
        LinesPaper.afterEnd(curves).ifPresent(end -> names.add(new Name(words, place(end))));
    }

    private Point place(Vector3D point) {
        return lines.paper().profile(point.getX(), point.getZ());
    }
}
