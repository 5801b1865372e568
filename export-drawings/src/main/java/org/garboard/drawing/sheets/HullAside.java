package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.appendage.Keel;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.layout.NameColumn;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Station;
import org.garboard.offsets.StrakeEdges;

/** The hull seen from starboard: her lines with their names, steps, ends, what hangs on her, base line, stations with their distances. */
public final class HullAside {

    private HullAside() {
    }

    /** @param height of the names [mm] */
    public static List<Entity> lines(Hull hull, HullOffsets table, HullOnPaper paper, double height) {
        List<Entity> shown = new ArrayList<>();
        List<NameColumn.Name> names = new ArrayList<>();
        for (HullLine line : hull.lines()) {
            shown.addAll(paper.profile(line));
            // a rabbet's half-siding lies in profile where the rabbet does
            if (line.kind() != LineKind.RABBET) {
                names.add(new NameColumn.Name(line.name(), paper.profile(hull.afterEnd(), line.z(line.afterEnd()))));
            }
        }
        Keel.of(table, hull).ifPresent(keel -> {
            shown.add(paper.profile(keel));
            names.add(new NameColumn.Name(keel.name(), paper.profile(keel.to(), keel.section(keel.to()).z())));
        });
        for (StrakeEdges strake : table.strakes()) {
            shown.addAll(paper.profile(strake));
        }
        shown.addAll(NameColumn.leftOf(-3, 0, names, height));
        shown.addAll(paper.afterEndInProfile());
        shown.addAll(paper.stepsInProfile());
        shown.addAll(paper.foreEndInProfile());
        shown.add(new Line(Layer.GRID, paper.profile(hull.afterEnd(), 0), paper.profile(hull.forwardEnd(), 0)));
        return shown;
    }

    /** Each station from keel to sheer, and its name with its distance below the base line. */
    public static List<Entity> stations(Hull hull, HullOffsets table, HullOnPaper paper, Figures figures, double height) {
        List<Entity> shown = new ArrayList<>();
        List<StationLabels.Label> labels = new ArrayList<>();
        HullLine sheer = hull.lines().get(hull.lines().size() - 1);
        for (Station station : table.skinStations()) {
            double x = station.x();
            shown.add(new Line(Layer.GRID, paper.profile(x, hull.keel().z(x)), paper.profile(x, sheer.z(x))));
            labels.add(new StationLabels.Label(paper.lengthwise(x), station.name() + ": " + figures.aftOfOrigin(x)));
        }
        shown.addAll(StationLabels.of(labels, height));
        return shown;
    }
}
