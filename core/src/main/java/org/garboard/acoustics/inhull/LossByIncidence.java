package org.garboard.acoustics.inhull;

import java.util.function.DoubleUnaryOperator;

/** Loss of a beam through a skin by the angle at which its axis meets it, read off a table: for searches of a whole bottom. */
public final class LossByIncidence {
    private static final double STEP = Math.toRadians(1);
    /** Beyond this no element is put inside a hull [deg]: our choice. */
    private static final int MOST_DEG = 60;

    private final double[] loss;

    private LossByIncidence(double[] loss) {
        this.loss = loss;
    }

    static LossByIncidence of(DoubleUnaryOperator lossAt) {
        double[] loss = new double[MOST_DEG + 1];
        for (int i = 0; i < loss.length; i++) {
            loss[i] = lossAt.applyAsDouble(i * STEP);
        }
        return new LossByIncidence(loss);
    }

    /** [dB] at an angle [rad]; infinite beyond 60 degrees. */
    public double at(double incidence) {
        double place = Math.abs(incidence) / STEP;
        int i = (int) place;
        return i >= loss.length - 1 ? Double.POSITIVE_INFINITY : loss[i] + (place - i) * (loss[i + 1] - loss[i]);
    }
}
