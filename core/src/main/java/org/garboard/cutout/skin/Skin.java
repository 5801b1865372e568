package org.garboard.cutout.skin;

/** The outside of a bottom as a height over the plan. */
public interface Skin {
    /** How many numbers {@link #at} fills in. */
    int SIZE = 4;

    /**
     * Height z [m], its slopes dz/dx and dz/dy, and the larger size of the two principal curvatures [1/m].
     *
     * @return false, and nothing that counts written, off the skin
     */
    boolean at(double x, double y, double[] out);
}
