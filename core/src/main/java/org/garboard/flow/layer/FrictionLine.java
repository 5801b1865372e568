package org.garboard.flow.layer;

/** Mean friction coefficient of a smooth flat plate, turbulent from its leading edge, by Reynolds number of its length. */
public enum FrictionLine {
    /** 0.075 / (log10 Re - 2)^2, ITTC 1957. */
    ITTC_57 {
        @Override
        public double mean(double reynolds) {
            double decades = Math.log10(required(reynolds)) - 2;
            return 0.075 / (decades * decades);
        }
    },
    /** 0.242 / sqrt(C) = log10(Re C), K. E. Schoenherr 1932; the line of Savitsky 1964. */
    SCHOENHERR {
        @Override
        public double mean(double reynolds) {
            double log = Math.log(required(reynolds));
            double root = Math.sqrt(ITTC_57.mean(reynolds));
            for (int turn = 0; turn < 50; turn++) {
                double miss = 0.242 * LN_10 / root - log - 2 * Math.log(root);
                double step = miss / (-0.242 * LN_10 / (root * root) - 2 / root);
                root -= step;
                if (Math.abs(step) <= 1e-15 * root) {
                    break;
                }
            }
            return root * root;
        }
    },
    /** 0.523 / ln^2(0.06 Re), F. M. White, Viscous Fluid Flow; from memory. */
    WHITE {
        @Override
        public double mean(double reynolds) {
            double log = Math.log(0.06 * required(reynolds));
            return 0.523 / (log * log);
        }
    };

    /** Below it no plate is turbulent, and the lines are not meant for it. */
    public static final double LEAST_REYNOLDS = 1e5;
    private static final double LN_10 = Math.log(10);

    /** @throws IllegalArgumentException below {@link #LEAST_REYNOLDS} */
    public abstract double mean(double reynolds);

    private static double required(double reynolds) {
        if (!(reynolds >= LEAST_REYNOLDS)) {
            throw new IllegalArgumentException("friction line: Reynolds number " + reynolds + "; it must be 1e5 or more");
        }
        return reynolds;
    }
}
