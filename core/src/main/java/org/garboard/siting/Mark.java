package org.garboard.siting;

import org.garboard.units.LengthUnit;

/**
 * The step to which a place is given: a yard marks no finer, and a place to the millimetre would
 * promise what neither table nor tape holds (our choice, because a tape on a curved skin repeats
 * to about 3 mm).
 */
public enum Mark {
    FIVE_MILLIMETRES(5 * LengthUnit.MILLIMETRE.metres()),
    QUARTER_INCH(LengthUnit.INCH.metres() / 4);

    private static final double NANOMETRES = 1e9;

    private final double step;

    Mark(double step) {
        this.step = step;
    }

    /** One step [m]. */
    public double step() {
        return step;
    }

    /** The length rounded to whole steps [m]. */
    public double round(double length) {
        return steps(Math.rint(length / step));
    }

    /** A number of steps [m], free of the rounding that repeated steps pile up. */
    double steps(double count) {
        return Math.rint(count * step * NANOMETRES) / NANOMETRES;
    }
}
