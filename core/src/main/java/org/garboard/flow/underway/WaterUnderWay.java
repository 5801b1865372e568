package org.garboard.flow.underway;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.doublebody.DoubleBody;
import org.garboard.flow.doublebody.HullFlow;
import org.garboard.flow.doublebody.MeshWish;
import org.garboard.flow.doublebody.Stern;
import org.garboard.flow.layer.LayerLaw;
import org.garboard.flow.streams.HullStreams;
import org.garboard.flow.streams.SweepDown;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;

/** Finds the water along one hull's bottom at her attitudes. A double body is worked out once for each waterline. */
public final class WaterUnderWay {
    private final Hull hull;
    private final Water water;
    private final double upper;
    private final Map<WaterSurface, Streams> found = new LinkedHashMap<>();

    /** @param reason why there are none; empty where there are */
    private record Streams(Optional<HullStreams> streams, String reason) {
    }

    /** @param upper depth of the water at the bow that carries air [m] */
    public WaterUnderWay(Hull hull, Water water, double upper) {
        this.hull = hull;
        this.water = water;
        this.upper = upper;
    }

    public UnderWay at(Attitude attitude) {
        if (attitude instanceof Attitude.Wetted planes) {
            return new PlaningWater(hull, planes, water, Optional.empty());
        }
        if (attitude instanceof Attitude.Stepped stepped) {
            return stepped.forward().<UnderWay>map(planes -> new PlaningWater(hull, planes, water, Optional.of(stepped.bottom())))
                .orElseGet(() -> new UnknownWater(stepped.doubts().isEmpty() ? "where the water meets the bottom ahead of the first step is not known"
                    : stepped.doubts().get(0)));
        }
        return attitude instanceof Attitude.Floats floats ? afloat(floats) : new UnknownWater(((Attitude.NotKnown) attitude).reason());
    }

    private UnderWay afloat(Attitude.Floats floats) {
        Streams streams = found.computeIfAbsent(floats.afloat().hull().water(), this::past);
        return streams.streams().<UnderWay>map(lines -> new FloatingWater(hull, floats, water, lines, SweepDown.of(lines, upper)))
            .orElseGet(() -> new UnknownWater(streams.reason(), layerAtTransom(floats)));
    }

    /** As {@link UnderWay#layerAtTransom}, which needs no streamlines. */
    public LayerLaw.Answer layerAtTransom(Attitude attitude) {
        if (!(attitude instanceof Attitude.Floats floats)) {
            return at(attitude).layerAtTransom();
        }
        return hull.steps().isEmpty() ? FloatingWater.layerAtTransom(floats, water)
            : new LayerLaw.Outside("behind a step the layer begins anew, where is not worked out");
    }

    private Streams past(WaterSurface surface) {
        DoubleBody body = DoubleBody.past(hull, surface, MeshWish.atMost(MeshWish.USUAL_PANELS, Stern.STRAIGHT_RUN));
        return body instanceof HullFlow flow ? new Streams(Optional.of(new HullStreams(flow)), "") : new Streams(Optional.empty(), ((DoubleBody.None) body).reason());
    }
}
