package org.garboard.flow.streams;

/** How water moves over a skin that is known by two parameters: u from 0 to columns, v from 0 to rows. */
interface SurfaceMotion {
    int columns();

    int rows();

    /** du and dv for a metre along the flow. */
    void rate(double u, double v, double[] out);

    /** x, y, z [m]. */
    void position(double u, double v, double[] out);
}
