package org.garboard.mount;

import org.garboard.craft.Transducer;

/**
 * What must find its bed on the skin: a rectangle with rounded corners, measured along the skin, the
 * long side parallel to the keel line in plan. Lengths [m].
 *
 * @param length fore and aft
 * @param width athwartships
 * @param cornerRadius of the outline; more than half the smaller side counts as that half
 */
public record Footprint(double length, double width, double cornerRadius) {
    public Footprint {
        if (!(length > 0 && width > 0 && cornerRadius >= 0)) {
            throw new IllegalArgumentException("footprint of " + length + " m x " + width
                + " m with corners of " + cornerRadius + " m; length and width must be above 0, the radius not below");
        }
        cornerRadius = Math.min(cornerRadius, Math.min(length, width) / 2);
    }

    /** Of a body, as its maker dimensions it. */
    public static Footprint of(Transducer body) {
        return new Footprint(body.length(), body.width(), body.cornerRadius());
    }

    /** Larger all round by so much [m]. */
    public Footprint widened(double by) {
        return new Footprint(length + 2 * by, width + 2 * by, cornerRadius + by);
    }
}
