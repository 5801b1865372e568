package org.garboard.acoustics.clearance;

/** Something that a ray may run into. */
public sealed interface Body permits Block, Cylinder, OwnSkin {

    /** As people call it. */
    String name();

    /**
     * Shortens each ray to where it meets this body.
     *
     * @param reach of each ray [m], in and out; a ray that starts inside comes to 0, one that misses keeps its own
     */
    void shorten(RayFan fan, double[] reach);
}
