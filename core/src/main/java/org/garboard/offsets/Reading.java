package org.garboard.offsets;

/** Which way a point of the skin was read, and so how its rounding moves it. */
public enum Reading {
    /** Its height was read at a distance out that is known: a buttock. */
    UP {
        @Override
        public double share(double outward, double upward) {
            return Math.abs(upward);
        }
    },
    /** Its distance out was read at a height that is known: a waterline. */
    OUT {
        @Override
        public double share(double outward, double upward) {
            return Math.abs(outward);
        }
    },
    /** Both were read and both are rounded, as on a point that was marked on the skin first. */
    UP_AND_OUT {
        @Override
        public double share(double outward, double upward) {
            return Math.abs(outward) + Math.abs(upward);
        }
    };

    /**
     * How far at most the skin moves along a direction of the section's plane for a reading that moves by one.
     *
     * @param outward part of the direction that points outward
     * @param upward part that points up
     */
    public abstract double share(double outward, double upward);
}
