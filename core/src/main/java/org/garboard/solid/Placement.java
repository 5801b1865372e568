package org.garboard.solid;

/** Where a plane's places and heights over it lie in space. */
@FunctionalInterface
public interface Placement {
    /** Writes x, y, z of a place (u, v) at a height w into out from at [m]; a turn and a shift, right-handed. */
    void place(double u, double v, double w, double[] out, int at);

    /** Space is the plane's own. */
    static Placement unmoved() {
        return (u, v, w, out, at) -> {
            out[at] = u;
            out[at + 1] = v;
            out[at + 2] = w;
        };
    }
}
