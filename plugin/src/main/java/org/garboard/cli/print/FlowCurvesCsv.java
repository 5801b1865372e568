package org.garboard.cli.print;

import java.io.PrintWriter;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.flow.attitude.AtSpeed;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.underway.LayerContour;
import org.garboard.flow.underway.UnderWay;
import org.garboard.flow.underway.WaterUnderWay;
import org.garboard.hull.Hull;
import org.garboard.units.FixedDecimal;

/** The lines of the water on the bottom as CSV, a row for each point, to starboard: for a CAD program to show. */
public final class FlowCurvesCsv {
    private static final int PLACES = 5;

    private final Csv csv;
    private final Hull hull;

    public FlowCurvesCsv(PrintWriter out, Hull hull) {
        this.csv = new Csv(out);
        this.hull = hull;
        csv.row("speed_kn", "load", "curve", "branch", "layer_mm", "x_m", "y_m", "z_m");
    }

    /** The curves at one speed: what is not known has none. */
    public void print(AtSpeed each, WaterUnderWay waters) {
        String knots = Csv.number(each.speed().knots(), 2);
        water(knots, each.middle());
        stagnation(knots, "middle", each.middle());
        each.ends().forEach(end -> stagnation(knots, end.name(), end.attitude()));
        UnderWay along = waters.at(each.middle());
        for (int i = 0; i < along.paths().size(); i++) {
            onSkin(new String[] {knots, "middle", "streamline", Integer.toString(i + 1), ""}, along.paths().get(i).points());
        }
        for (int i = 0; i < along.contours().size(); i++) {
            LayerContour contour = along.contours().get(i);
            onSkin(new String[] {knots, "middle", "layer", Integer.toString(i + 1), FixedDecimal.format(1000 * contour.thickness(), 1)}, contour.points());
        }
    }

    /** The undisturbed water as a straight line from end to end of the boat, level athwartships. */
    private void water(String knots, Attitude attitude) {
        attitude.level().ifPresent(water -> {
            for (double x : new double[] {hull.forwardEnd(), hull.afterEnd()}) {
                csv.row(knots, "middle", "water", "1", "", Csv.number(x, PLACES), Csv.number(0, PLACES), Csv.number(water.at(x), PLACES));
            }
        });
    }

    private void stagnation(String knots, String load, Attitude attitude) {
        if (attitude instanceof Attitude.Wetted planes) {
            onSkin(new String[] {knots, load, "stagnation line", "1", ""}, planes.line().points());
        } else if (attitude instanceof Attitude.Stepped stepped) {
            stepped.forward().ifPresent(planes -> onSkin(new String[] {knots, load, "stagnation line", "1", ""}, planes.line().points()));
        }
    }

    /** A place that rounding has put off the skin is left out. */
    private void onSkin(String[] begin, List<Vector2D> points) {
        for (Vector2D point : points) {
            double z = hull.height(point.getX(), Math.abs(point.getY()));
            if (!Double.isNaN(z)) {
                csv.row(begin[0], begin[1], begin[2], begin[3], begin[4],
                    Csv.number(point.getX(), PLACES), Csv.number(point.getY(), PLACES), Csv.number(z, PLACES));
            }
        }
    }
}
