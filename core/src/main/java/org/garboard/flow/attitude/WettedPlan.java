package org.garboard.flow.attitude;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The wetted bottom in plan, one side.
 *
 * @param mean wetted length over the half-breadth that is wet [m]; of a straight line the mean of keel and chine
 * @param centre of the wetted area, forward of its after end [m]
 */
record WettedPlan(double mean, double centre) {

    /** @param end x of its after end [m] */
    static WettedPlan of(StagnationLine line, double end) {
        List<Vector2D> points = line.points();
        double area = 0;
        double moment = 0;
        for (int i = 1; i < points.size(); i++) {
            double inner = end - points.get(i - 1).getX();
            double outer = end - points.get(i).getX();
            double width = points.get(i).getY() - points.get(i - 1).getY();
            area += 0.5 * width * (inner + outer);
            moment += width * (inner * inner + inner * outer + outer * outer) / 6;
        }
        return new WettedPlan(area / points.get(points.size() - 1).getY(), moment / area);
    }

    /** Of a straight line between wetted lengths of keel and chine [m]. */
    static WettedPlan straight(double keel, double chine) {
        return new WettedPlan(0.5 * (keel + chine), (keel * keel + keel * chine + chine * chine) / (3 * (keel + chine)));
    }
}
