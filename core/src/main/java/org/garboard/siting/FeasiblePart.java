package org.garboard.siting;

/** A feasible region and the grid nodes in it. */
final class FeasiblePart {
    private final Region region;
    private final int[] nodes;

    FeasiblePart(Region region, int[] nodes) {
        this.region = region;
        this.nodes = nodes;
    }

    Region region() {
        return region;
    }

    /** Numbers of the nodes on the grid, rising. */
    int[] nodes() {
        return nodes.clone();
    }
}
