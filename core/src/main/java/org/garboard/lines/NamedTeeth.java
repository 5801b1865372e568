package org.garboard.lines;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Curve;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hull.Panel;

/** Teeth on a named line seen square to one plane: curvature y'' / (1 + y'^2)^1.5 of its shadow there. */
final class NamedTeeth {
    private final Panel panel;
    private final double v;

    private NamedTeeth(Panel panel, double v) {
        this.panel = panel;
        this.v = v;
    }

    /** A piece of the line is an edge of a panel: its lower, or of the last panel its upper. */
    static NamedTeeth of(Hull hull, HullLine line, Curve piece) {
        Panel panel = hull.panels().get(piece.panel());
        if (panel.lower().name().equals(line.name())) {
            return new NamedTeeth(panel, panel.knotsAcross().start());
        }
        if (panel.upper().name().equals(line.name())) {
            return new NamedTeeth(panel, panel.knotsAcross().end());
        }
        throw new IllegalArgumentException("no panel of the hull ends at " + line.name());
    }

    /** @param square athwartships for the profile, up for the plan */
    List<Tooth> in(Vector3D square, List<Vector3D> feet) {
        boolean profile = square.getY() != 0;
        double[] at = new double[Panel.DERIVATIVES];
        List<Tooth> teeth = new ArrayList<>();
        for (Vector3D foot : feet) {
            panel.differentiate(foot.getX(), v, at, 0);
            double slope = profile ? at[3] : at[2];
            double bend = profile ? at[7] : at[6];
            double length = Math.sqrt(1 + slope * slope);
            double side = bend > 0 ? -1 : 1;
            Vector3D away = profile ? Vector3D.of(-slope, 0, 1) : Vector3D.of(-slope, 1, 0);
            teeth.add(new Tooth(foot, away.multiply(side / length), Math.abs(bend) / (length * length * length)));
        }
        return teeth;
    }
}
