package org.garboard.mount.water;

import java.util.Optional;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.StagnationLine;
import org.garboard.hydrostatics.WaterSurface;

/**
 * Floating as at rest: the layer grows from the forward end of the water line, which is farther than from where the water went
 * under, and so gives the thicker layer.
 */
final class FloatingEnd implements EndOfBand {
    private final String name;
    private final double outer;
    private final WaterSurface water;
    private final double from;
    private final double cosine;

    FloatingEnd(String name, Attitude.Floats floats) {
        this.name = name;
        this.outer = floats.speed();
        this.water = floats.afloat().hull().water();
        this.from = floats.afloat().hull().from();
        this.cosine = Math.cos(water.trim().radians());
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public double trim() {
        return water.trim().radians();
    }

    @Override
    public double outer() {
        return outer;
    }

    @Override
    public double run(double x, double y) {
        return x - from;
    }

    @Override
    public Optional<StagnationLine> line() {
        return Optional.empty();
    }

    @Override
    public double depth(double x, double z) {
        return (water.at(x) - z) * cosine;
    }

    @Override
    public boolean floats() {
        return true;
    }

    @Override
    public String reason(double x, double y) {
        return "";
    }
}
