package org.garboard.acoustics.laminate;

/**
 * What becomes of the power that meets a plate; what is neither let through nor sent back stays in it as heat.
 *
 * @param transmitted share let through
 * @param reflected share sent back
 */
public record Passage(double transmitted, double reflected) {

    /** Loss one way [dB], positive. */
    public double lossDecibels() {
        return -10 * Math.log10(transmitted);
    }
}
