package org.garboard.flow.place;

import java.util.List;
import java.util.Locale;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.steps.AirBehind;
import org.garboard.hull.Hull;
import org.garboard.hull.Step;
import org.garboard.hydrostatics.WaterSurface;

/**
 * Where the water that passes a place began its run along the skin. On a planing bottom it runs "predominantly aft" from
 * the stagnation line (Savitsky 1964); behind a step from where it comes back; afloat from the forward end of the water
 * line, which is farther than from the place where it went under, and so gives the thicker layer.
 */
sealed interface RunStart permits RunStart.At, RunStart.None {

    /**
     * @param x where it begins [m]
     * @param speed of the water outside the layer [m/s]
     */
    record At(double x, double speed) implements RunStart {
    }

    /** @param reason in words */
    record None(String reason) implements RunStart {
    }

    /** Of a place on the bottom. */
    static RunStart of(Hull hull, Attitude attitude, double x, double y) {
        double z = hull.height(x, y);
        if (Double.isNaN(z)) {
            return new None(String.format(Locale.ROOT, "x = %.3f m, y = %.3f m is off the skin", x, y));
        }
        if (attitude instanceof Attitude.Wetted planes) {
            return planing(hull, planes, x, y);
        }
        if (attitude instanceof Attitude.Floats floats) {
            return afloat(floats, x, z);
        }
        return attitude instanceof Attitude.Stepped stepped ? stepped(hull, stepped, x, y) : new None(((Attitude.NotKnown) attitude).reason());
    }

    private static RunStart planing(Hull hull, Attitude.Wetted planes, double x, double y) {
        double start = planes.line().x(y);
        if (Double.isNaN(start) && planes instanceof Attitude.Planes && Math.abs(y) <= hull.bottomEdge().y(x)) {
            // the bottom goes on growing wider abaft of where its chine meets the water
            start = planes.line().atChine();
        }
        if (Double.isNaN(start)) {
            return new None(String.format(Locale.ROOT, "y = %.3f m lies outboard of where the bottom is wet", y));
        }
        if (x > planes.end()) {
            return new None(String.format(Locale.ROOT, "x = %.3f m lies abaft of where the bottom ends that carries her, at x = %.3f m", x, planes.end()));
        }
        return x > start ? new At(start, planes.bottomSpeed()) : new None(String.format(Locale.ROOT,
            "x = %.3f m lies ahead of the stagnation line, which is at x = %.3f m there: wetted by spray at most", x, start));
    }

    private static RunStart afloat(Attitude.Floats floats, double x, double z) {
        WaterSurface water = floats.afloat().hull().water();
        double start = floats.afloat().hull().from();
        return z < water.at(x) && x > start ? new At(start, floats.speed())
            : new None(String.format(Locale.ROOT, "x = %.3f m, %.3f m above base is not under water", x, z));
    }

    private static RunStart stepped(Hull hull, Attitude.Stepped stepped, double x, double y) {
        List<Step> steps = hull.steps();
        int behind = -1;
        for (int i = 0; i < steps.size() && x > steps.get(i).x(y); i++) {
            behind = i;
        }
        if (behind < 0) {
            return stepped.forward().map(planes -> planing(hull, planes, x, y)).orElseGet(() -> new None(String.join("; ", stepped.doubts())));
        }
        AirBehind air = stepped.bottom().air().get(behind);
        Step step = steps.get(behind);
        double quarter = hull.bottomEdge().y(step.face().least()) / 2;
        if (air.centreline().isEmpty() || air.quarterBeam().isEmpty() || Math.abs(y) > quarter) {
            return new None("behind step " + step.name() + ", where it is not known that the water comes back");
        }
        double share = Math.abs(y) / quarter;
        double back = step.x(y) + (1 - share) * air.centreline().get() + share * air.quarterBeam().get();
        return x > back ? new At(back, stepped.speed()) : new None("in the air behind step " + step.name());
    }

    /** Along the skin from the start aft to a place at one half-breadth [m]. */
    static double length(Hull hull, At start, double x, double y) {
        int pieces = 16;
        double sum = 0;
        double before = Double.NaN;
        for (int i = 0; i <= pieces; i++) {
            double at = hull.height(start.x() + (x - start.x()) * i / pieces, y);
            double level = (x - start.x()) / pieces;
            // where the skin does not reach forward at this half-breadth the water has run level
            sum += i == 0 ? 0 : Double.isNaN(before) || Double.isNaN(at) ? level : Math.hypot(level, at - before);
            before = at;
        }
        return sum;
    }
}
