package org.garboard.exchange;

import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.FlatPoint;
import org.garboard.exchange.xml.record.PlanRing;
import org.garboard.exchange.xml.record.SpaceRing;
import org.garboard.siting.PlanPoint;
import org.garboard.units.FixedDecimal;

/** Numbers as the record prints them: metres to the micrometre, millimetres and degrees to match. */
final class Decimals {
    private static final int METRE_PLACES = 6;
    private static final int MILLIMETRE_PLACES = 3;
    private static final int DEGREE_PLACES = 5;

    private Decimals() {
    }

    static BigDecimal fixed(double value, int places) {
        return new BigDecimal(FixedDecimal.format(value, places));
    }

    static BigDecimal metres(double metres) {
        return fixed(metres, METRE_PLACES);
    }

    static BigDecimal millimetres(double metres) {
        return fixed(metres * 1000, MILLIMETRE_PLACES);
    }

    static BigDecimal degrees(double radians) {
        return fixed(Math.toDegrees(radians), DEGREE_PLACES);
    }

    static PlanRing planRing(List<PlanPoint> points) {
        PlanRing ring = new PlanRing();
        points.forEach(point -> ring.getValue().add(joined(point.x(), point.y())));
        return ring;
    }

    static PlanRing flatRing(List<FlatPoint> points) {
        PlanRing ring = new PlanRing();
        points.forEach(point -> ring.getValue().add(joined(point.u(), point.v())));
        return ring;
    }

    static SpaceRing spaceRing(List<Vector3D> points) {
        SpaceRing ring = new SpaceRing();
        points.forEach(point -> ring.getValue().add(joined(point.getX(), point.getY(), point.getZ())));
        return ring;
    }

    private static String joined(double... metres) {
        StringBuilder text = new StringBuilder();
        for (double value : metres) {
            if (text.length() > 0) {
                text.append(',');
            }
            FixedDecimal.append(text, value, METRE_PLACES);
        }
        return text.toString();
    }
}
