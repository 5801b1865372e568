package org.garboard.flow.underway;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.BottomFeatures;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.doublebody.Froude;
import org.garboard.flow.layer.LayerLaw;
import org.garboard.flow.shadow.AlongStreams;
import org.garboard.flow.shadow.Cast;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.flow.shadow.ShadowCaster;
import org.garboard.flow.shadow.Shedder;
import org.garboard.flow.streams.HullStreams;
import org.garboard.flow.streams.Streamline;
import org.garboard.flow.streams.SweepDown;
import org.garboard.flow.water.Water;
import org.garboard.geometry.Ring;
import org.garboard.hull.Hull;
import org.garboard.units.FixedDecimal;

/**
 * Water along a hull that floats as at rest: the streamlines of her double body. The layer grows along them as on a flat
 * plate at the boat's speed.
 *
 * @param hull the hull
 * @param floats how she lies
 * @param water what in
 * @param streams along her
 * @param sweep what comes down from the surface at the bow
 */
public record FloatingWater(Hull hull, Attitude.Floats floats, Water water, HullStreams streams, SweepDown sweep) implements UnderWay {
    private static final int PATHS = 13;
    /** Part of the wet length at which the paths are picked: about amidships. */
    private static final double AMIDSHIPS = 0.5;

    @Override
    public List<FlowPath> paths() {
        List<FlowPath> paths = new ArrayList<>();
        double station = streams.forwardEnd() + AMIDSHIPS * (streams.afterEnd() - streams.forwardEnd());
        double deep = streams.keelDepth(station);
        for (int i = PATHS - 1; i >= 0; i--) {
            if (streams.atDepth(station, deep * (i + 0.5) / PATHS) instanceof Streamline line && line.points().size() > 1 && line.lost().isEmpty()) {
                paths.add(new FlowPath(line.points().stream().map(point -> Vector2D.of(point.x(), point.y())).toList(),
                    line.points().stream().map(point -> point.run()).toList()));
            }
        }
        return paths;
    }

    @Override
    public List<LayerContour> contours() {
        return LayerContour.along(paths(), LayerLaw.USUAL, floats.speed(), water);
    }

    @Override
    public LayerLaw.Answer layerAtTransom() {
        return layerAtTransom(floats, water);
    }

    /** From stem to after end, a flat plate as long as she is wet. */
    static LayerLaw.Answer layerAtTransom(Attitude.Floats floats, Water water) {
        return LayerLaw.USUAL.after(floats.afloat().length(), floats.speed(), water);
    }

    /** What share of the upper water at the bow passes so near a place of the skin, port is negative y; NaN off the skin. */
    public double sweptDown(double x, double y, double within) {
        return sweep.share(x, y, hull.height(x, Math.abs(y)), within);
    }

    @Override
    public List<Cast> shadows(BottomFeatures laid) {
        ShadowCaster caster = new ShadowCaster(solid(), new AlongStreams(streams), 1);
        return laid.laid().stream().map(Shedder::of).map(caster::of).toList();
    }

    @Override
    public List<PlanRegion> solid() {
        List<Vector2D> outline = new ArrayList<>(streams.edge());
        outline.add(Vector2D.of(streams.afterEnd(), 0));
        outline.add(Vector2D.of(streams.forwardEnd(), 0));
        return List.of(new PlanRegion(new Ring(outline), List.of()));
    }

    @Override
    public List<String> notes() {
        List<String> notes = new ArrayList<>(floats.doubts().stream().map(UnderWay::sentence).toList());
        notes.add("The water's surface is taken to be level: Froude number " + FixedDecimal.format(floats.froude(), 2) + ", "
            + (floats.froude() <= Froude.LEVEL_WATER ? "" : "MORE THAN THE ")
            + FixedDecimal.format(Froude.LEVEL_WATER, 1) + (floats.froude() <= Froude.LEVEL_WATER ? " is the most" : " THAT IT SERVES FOR") + " (guidance).");
        sweep.lost().ifPresent(lost -> notes.add("Water from the surface at the bow is NOT KNOWN everywhere: " + lost + "."));
        notes.add("The layer is that of a flat plate at the boat's speed, from the stem.");
        return notes;
    }
}
