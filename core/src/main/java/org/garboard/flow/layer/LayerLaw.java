package org.garboard.flow.layer;

import org.garboard.flow.water.Water;
import org.garboard.units.FixedDecimal;

/**
 * How a layer is worked out along a run.
 *
 * @param start where it becomes turbulent
 * @param roughness equivalent sand roughness of the skin [m], 0 for smooth
 */
public record LayerLaw(Start start, double roughness) {
    /** Reynolds numbers of a run: below, a layer that starts turbulent means nothing; above, no boat. */
    public static final double LEAST_REYNOLDS = 1e5;
    public static final double MOST_REYNOLDS = 1e10;
    /** A flat plate in a quiet stream turns turbulent about here; textbook value, from memory. */
    public static final double TRANSITION = 5e5;
    private static final double MOST_ROUGHNESS = 0.005;

    /** Where a layer becomes turbulent. */
    public enum Start {
        /** At once: behind a stagnation line, a stem in waves, fouling. The thicker, and the default. */
        TURBULENT,
        /** At {@link LayerLaw#TRANSITION}: a clean, smooth, quiet start. */
        LAMINAR
    }

    /** Smooth and turbulent from the beginning. */
    public static final LayerLaw USUAL = new LayerLaw(Start.TURBULENT, 0);

    public LayerLaw {
        if (!(roughness >= 0 && roughness <= MOST_ROUGHNESS)) {
            throw new IllegalArgumentException("roughness of the skin is " + roughness + " m; it must be from 0 to 0.005 m");
        }
    }

    /** What is known of a layer after a run. */
    public sealed interface Answer permits Known, Outside {
    }

    /** A layer within the range of its law. */
    public record Known(Layer layer) implements Answer {
    }

    /** No figure. @param reason in words */
    public record Outside(String reason) implements Answer {
    }

    /** The layer after a run [m] in an outer flow of a speed [m/s], by wall and wake. */
    public Answer after(double run, double speed, Water water) {
        double reynolds = run * speed / water.viscosity();
        if (!(reynolds >= LEAST_REYNOLDS && reynolds <= MOST_REYNOLDS)) {
            return outside(reynolds, "1e5 to 1e10");
        }
        if (start == Start.LAMINAR && reynolds <= TRANSITION) {
            return new Known(Laminar.layer(run, speed, reynolds));
        }
        double rough = roughness * speed / water.viscosity();
        WallWake law = start == Start.LAMINAR ? WallWake.after(TRANSITION, rough) : WallWake.turbulent(rough);
        return new Known(law.layer(run, speed, reynolds));
    }

    /** The same by the quick law, smooth and turbulent from the beginning. */
    public static Answer quick(double run, double speed, Water water) {
        double reynolds = run * speed / water.viscosity();
        boolean within = reynolds >= SeventhPower.LEAST_REYNOLDS && reynolds <= SeventhPower.MOST_REYNOLDS;
        return within ? new Known(SeventhPower.after(run, speed, water)) : outside(reynolds, "1e6 to 1e9");
    }

    private static Answer outside(double reynolds, String range) {
        return new Outside("Reynolds number of the run "
            + (reynolds < 1e12 && reynolds >= 0 ? FixedDecimal.format(reynolds / 1e6, 3) + " million" : Double.toString(reynolds))
            + " is outside " + range);
    }
}
