package org.garboard.flow.doublebody;

import org.garboard.hydrostatics.WaterSurface;

/** Turns places of the hull frame into the water's frame and back; see the package. */
public final class WaterFrame {
    private final double about;
    private final double height;
    private final double cos;
    private final double sin;

    public WaterFrame(WaterSurface water) {
        this.about = water.about();
        this.height = water.height();
        this.cos = Math.cos(water.trim().radians());
        this.sin = Math.sin(water.trim().radians());
    }

    /** Aft along the water's surface, of a place of the hull frame [m]. */
    public double along(double x, double z) {
        return (x - about) * cos + (z - height) * sin;
    }

    /** Up from the water's surface, of a place of the hull frame [m]; negative below it. */
    public double above(double x, double z) {
        return (z - height) * cos - (x - about) * sin;
    }

    /** x in the hull frame [m]. */
    public double x(double along, double above) {
        return about + along * cos - above * sin;
    }

    /** z in the hull frame [m]. */
    public double z(double along, double above) {
        return height + along * sin + above * cos;
    }
}
