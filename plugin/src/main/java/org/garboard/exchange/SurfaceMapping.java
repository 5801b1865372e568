package org.garboard.exchange;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.garboard.exchange.xml.surface.Panel;
import org.garboard.exchange.xml.surface.Poles;
import org.garboard.exchange.xml.surface.Row;
import org.garboard.exchange.xml.surface.Surface;
import org.garboard.exchange.xml.surface.TableFile;
import org.garboard.geometry.KnotVector;
import org.garboard.hull.Hull;

/** Turns the hull surface into its bean, every number exact. */
final class SurfaceMapping {
    private static final String STARBOARD = "starboard";

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
        hull.panels().forEach(panel -> bean.getPanel().add(panel(panel)));
        return bean;
    }

    private static Panel panel(org.garboard.hull.Panel panel) {
        Panel bean = new Panel();
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
