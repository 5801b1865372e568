package org.garboard.flow.underway;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.BottomFeatures;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.layer.LayerLaw;
import org.garboard.flow.shadow.AlongBottom;
import org.garboard.flow.shadow.Cast;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.flow.shadow.ShadowCaster;
import org.garboard.flow.shadow.Shedder;
import org.garboard.flow.steps.SteppedBottom;
import org.garboard.flow.water.Water;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/**
 * Water under a planing bottom: from the stagnation line straight aft, at the mean speed of the method under it.
 *
 * @param hull the bottom
 * @param planes how it runs
 * @param water what in
 * @param steps abaft of the planing surface; empty where it ends at the transom
 */
public record PlaningWater(Hull hull, Attitude.Wetted planes, Water water, Optional<SteppedBottom> steps) implements UnderWay {
    /** How many times as much a wake spreads outboard as inboard: bubbles ride up the deadrise. Our choice; no source. */
    public static final double OUTBOARD = 1.5;
    private static final int PATHS = 13;
    private static final int LOOKS = 100;

    @Override
    public List<FlowPath> paths() {
        List<FlowPath> paths = new ArrayList<>();
        double widest = planes.line().points().get(planes.line().points().size() - 1).getY();
        for (int i = 0; i < PATHS; i++) {
            double y = widest * i / (PATHS - 1);
            double from = planes.line().x(Math.min(y, widest * (1 - 1e-9)));
            double to = end(from, y);
            if (to > from) {
                paths.add(new FlowPath(List.of(Vector2D.of(from, y), Vector2D.of(to, y)), List.of(0.0, to - from)));
            }
        }
        return paths;
    }

    /** Where the bottom ends at a half-breadth: at its after end, or where the chine comes in. */
    private double end(double from, double y) {
        double last = from;
        for (int i = 1; i <= LOOKS; i++) {
            double x = from + (planes.end() - from) * i / LOOKS;
            if (hull.bottomEdge().y(x) < y - 1e-9) {
                return last;
            }
            last = x;
        }
        return planes.end();
    }

    @Override
    public List<LayerContour> contours() {
        return LayerContour.along(paths(), LayerLaw.USUAL, speed(), water);
    }

    /** x at which the water meets the bottom at a half-breadth; wider than the stagnation line reaches, as at the chine. */
    private double meets(double y) {
        double from = planes.line().x(y);
        return Double.isNaN(from) ? planes.line().atChine() : from;
    }

    private double speed() {
        return planes.bottomSpeed();
    }

    @Override
    public LayerLaw.Answer layerAtTransom() {
        return steps.isPresent() ? new LayerLaw.Outside("behind a step the layer begins anew, where is not worked out")
            : LayerLaw.USUAL.after(planes.wettedKeel(), speed(), water);
    }

    @Override
    public List<Cast> shadows(BottomFeatures laid) {
        ShadowCaster caster = new ShadowCaster(solid(), new AlongBottom(hull, Angle.ofDegrees(0)), OUTBOARD);
        return laid.laid().stream().map(Shedder::of)
            .map(each -> isDry(each) ? new Cast.None(each.name(), "dry or in spray at this speed") : caster.of(each)).toList();
    }

    @Override
    public List<PlanRegion> solid() {
        return steps.map(SteppedBottom::clean).orElseGet(() -> List.of(planes.solid(hull)));
    }

    /** All of it ahead of the stagnation line. */
    private boolean isDry(Shedder feature) {
        for (Quad quad : feature.cover()) {
            for (int k = 0; k < Quad.CORNERS; k++) {
                if (!(quad.x(k) < meets(quad.y(k)))) {
                    return false;
                }
            }
        }
        return true;
    }

    @Override
    public List<String> notes() {
        List<String> notes = new ArrayList<>(planes.doubts().stream().map(UnderWay::sentence).toList());
        notes.add("Abaft of the stagnation line the water is taken to run straight aft, at " + FixedDecimal.format(speed(), 2)
            + " m/s (Savitsky 1964: predominantly aft); ahead of it the bottom is dry or in spray.");
        return notes;
    }
}
