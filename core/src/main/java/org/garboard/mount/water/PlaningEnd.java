package org.garboard.mount.water;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.StagnationLine;
import org.garboard.hydrostatics.WaterSurface;

/** Planing: the water runs straight aft from the stagnation line ("predominantly aft", Savitsky 1964). Owns its arrays. */
final class PlaningEnd implements EndOfBand {
    private final String name;
    private final double trim;
    private final double outer;
    private final WaterSurface water;
    private final double cosine;
    private final StagnationLine line;
    private final double[] lineX;
    private final double[] lineY;

    PlaningEnd(String name, Attitude.Wetted planes) {
        this.name = name;
        this.trim = planes.trim().radians();
        this.outer = planes.bottomSpeed();
        this.water = planes.water();
        this.cosine = Math.cos(water.trim().radians());
        this.line = planes.line();
        this.lineX = line.points().stream().mapToDouble(Vector2D::getX).toArray();
        this.lineY = line.points().stream().mapToDouble(Vector2D::getY).toArray();
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public double trim() {
        return trim;
    }

    @Override
    public double outer() {
        return outer;
    }

    /**
     * Outboard of the line's end, where it comes to the chine, nothing is taken to run along the bottom: what comes in over a chine that
     * widens aft has met the spray. Our choice, on the safe side; the pictures of the flow count that strip as wet.
     */
    @Override
    public double run(double x, double y) {
        double side = Math.abs(y);
        int low = 0;
        int high = lineY.length - 1;
        if (side > lineY[high]) {
            return Double.NEGATIVE_INFINITY;
        }
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (lineY[middle] < side) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double width = lineY[high] - lineY[low];
        double share = width > 0 ? (side - lineY[low]) / width : 1;
        return x - (lineX[low] + share * (lineX[high] - lineX[low]));
    }

    @Override
    public Optional<StagnationLine> line() {
        return Optional.of(line);
    }

    @Override
    public double depth(double x, double z) {
        return (water.at(x) - z) * cosine;
    }

    @Override
    public boolean floats() {
        return false;
    }

    @Override
    public String reason(double x, double y) {
        return "";
    }
}
