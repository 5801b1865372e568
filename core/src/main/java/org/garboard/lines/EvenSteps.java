package org.garboard.lines;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Lays points off along a curve with a pair of dividers that are set to one span. */
public final class EvenSteps {

    private EvenSteps() {
    }

    /** Both ends, and between them points at even girth, no two farther apart along the curve than a step [m]. */
    public static List<Vector3D> along(List<Vector3D> curve, double step) {
        double length = 0;
        for (int i = 1; i < curve.size(); i++) {
            length += curve.get(i).distance(curve.get(i - 1));
        }
        int spans = (int) Math.max(1, Math.ceil(length / step * (1 - 1e-12)));
        List<Vector3D> points = new ArrayList<>();
        points.add(curve.get(0));
        double walked = 0;
        int next = 1;
        for (int i = 1; i < curve.size(); i++) {
            double chord = curve.get(i).distance(curve.get(i - 1));
            while (next < spans && walked + chord >= length * next / spans) {
                points.add(curve.get(i - 1).lerp(curve.get(i), (length * next / spans - walked) / chord));
                next++;
            }
            walked += chord;
        }
        points.add(curve.get(curve.size() - 1));
        return points;
    }
}
