package org.garboard.flow.layer;

/** Blasius' layer on a flat plate; coefficients from memory (White, Viscous Fluid Flow, ch. 4). */
final class Laminar {
    /** theta / x times sqrt(Re). */
    static final double MOMENTUM = 0.664;
    private static final double DISPLACEMENT = 1.721;
    private static final double THICKNESS = 5.0;

    private Laminar() {
    }

    static Layer layer(double run, double speed, double reynolds) {
        double scale = run / Math.sqrt(reynolds);
        return new Layer(run, speed, THICKNESS * scale, DISPLACEMENT * scale, MOMENTUM * scale,
            MOMENTUM / Math.sqrt(reynolds), new LaminarProfile());
    }
}
