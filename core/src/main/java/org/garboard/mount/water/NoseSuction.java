package org.garboard.mount.water;

import org.garboard.flow.cavitation.Suction;

/** Suction on a fairing block by its height, tabled. Owns its array. */
final class NoseSuction {
    /** Between two heights [m]. */
    private static final double STEP = 0.005;
    private static final int COUNT = 100;

    private final double[] suction = new double[COUNT];

    NoseSuction(double run, double width) {
        for (int i = 0; i < COUNT; i++) {
            suction[i] = -Suction.FairingNose.ofBlock(run, width, Math.max(1e-3, i * STEP)).least();
        }
    }

    /** Least pressure coefficient without its sign, of a block so high [m]. */
    double at(double height) {
        double place = Math.max(0, Math.min(COUNT - 1.001, height / STEP));
        int i = (int) place;
        return suction[i] + (place - i) * (suction[i + 1] - suction[i]);
    }
}
