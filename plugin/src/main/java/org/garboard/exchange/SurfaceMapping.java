package org.garboard.exchange;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.exchange.xml.surface.Panel;
import org.garboard.exchange.xml.surface.Edge;
import org.garboard.exchange.xml.surface.Poles;
import org.garboard.exchange.xml.surface.Row;
import org.garboard.exchange.xml.surface.StepEdges;
import org.garboard.exchange.xml.surface.Surface;
import org.garboard.exchange.xml.surface.TableFile;
import org.garboard.geometry.KnotVector;
import org.garboard.hull.Hull;
import org.garboard.hull.HullCurves;
import org.garboard.hull.Step;

/** Turns the hull surface into its bean, every number exact. */
final class SurfaceMapping {
    private static final String STARBOARD = "starboard";
    /** How far apart points of a step's edges lie at most [m]. */
    private static final double EDGE_POINTS = 0.05;

    private SurfaceMapping() {
    }

    static Surface toBean(Hull hull, String programVersion, FileHash table) {
        Surface bean = new Surface();
        bean.setVersion(SurfaceFile.VERSION);
        bean.setProgramVersion(programVersion);
        bean.setSide(STARBOARD);
        bean.setWithinM(ExactDecimal.of(hull.within()));
        bean.setTable(new TableFile());
        bean.getTable().setName(table.name());
        bean.getTable().setSha256(table.sha256());
        for (int i = 0; i < hull.panels().size(); i++) {
            bean.getPanel().add(panel(hull.panels().get(i), hull.steps().isEmpty() ? null : 1 + i / hull.panelsAcross()));
        }
        hull.steps().forEach(step -> bean.getStep().add(step(step)));
        if (!hull.endsSquare()) {
            bean.setTransomEdgeM(new Edge());
            new HullCurves(hull).afterEdge().forEach(curve -> bean.getTransomEdgeM().getCurve().add(curve(curve.points())));
        }
        if (hull.stem().isPresent()) {
            bean.setStemEdgeM(new Edge());
            new HullCurves(hull).stemEdge().forEach(curve -> bean.getStemEdgeM().getCurve().add(curve(curve.points())));
        }
        return bean;
    }

    private static StepEdges step(Step step) {
        StepEdges bean = new StepEdges();
        bean.setStation(step.name());
        List<List<Vector3D>> edges = step.edges(EDGE_POINTS);
        bean.setLowerM(curve(edges.get(0)));
        bean.setUpperM(curve(edges.get(1)));
        return bean;
    }

    private static Row curve(List<Vector3D> points) {
        Row bean = new Row();
        points.forEach(point -> bean.getValue().add(ExactDecimal.point(point.getX(), point.getY(), point.getZ())));
        return bean;
    }

    private static Panel panel(org.garboard.hull.Panel panel, Integer length) {
        Panel bean = new Panel();
        bean.setLength(length);
        bean.setCut(panel.isWhole() ? null : true);
        bean.setInnerLine(panel.lower().name());
        bean.setOuterLine(panel.upper().name());
        bean.setDegreeAlong(KnotVector.DEGREE);
        bean.setDegreeAcross(KnotVector.DEGREE);
        bean.getKnotsAlongM().addAll(knots(panel.knotsAlong()));
        bean.getKnotsAcross().addAll(knots(panel.knotsAcross()));
        bean.setPolesM(new Poles());
        for (int i = 0; i < panel.knotsAlong().size(); i++) {
            bean.getPolesM().getRow().add(row(panel, i));
        }
        return bean;
    }

    private static List<BigDecimal> knots(KnotVector knots) {
        return Arrays.stream(knots.toArray()).mapToObj(ExactDecimal::of).toList();
    }

    private static Row row(org.garboard.hull.Panel panel, int i) {
        Row bean = new Row();
        for (int k = 0; k < panel.knotsAcross().size(); k++) {
            bean.getValue().add(ExactDecimal.point(panel.knotsAlong().greville(i), panel.poleY(i, k), panel.poleZ(i, k)));
        }
        return bean;
    }
}
