package org.garboard.slips.fit;

/**
 * How far a cell stands from what all others say of it.
 *
 * @param metres written less foretold [m]
 * @param scatter standard deviation of that, rounding and all [m]
 */
public record Apart(double metres, double scatter) {
    /** In standard deviations. */
    public double t() {
        return metres / scatter;
    }
}
