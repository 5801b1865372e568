package org.garboard.cutout.pocket;

import java.util.Arrays;

/** At which shares of the way out a blend has its rings: close where it bends most, wide where it runs straight. */
final class BlendShares {
    private static final int FINE = 2000;
    /** Rings stand no farther apart than a fifth of the way: added to the root of the bend; our choice. */
    private static final double FLOOR = 0.35;

    private BlendShares() {
    }

    /** From 0 to 1, so that straight pieces of a blend of that height stray by chord at most, an eighth of bend by length squared. */
    static double[] of(double height, double chord) {
        double[] sum = new double[FINE + 1];
        for (int i = 1; i <= FINE; i++) {
            double t = (i - 0.5) / FINE;
            double bend = 60 * t * (1 - t) * Math.abs(1 - 2 * t);
            sum[i] = sum[i - 1] + (Math.sqrt(bend) + FLOOR) / FINE;
        }
        int count = Math.max(4, (int) Math.ceil(sum[FINE] * Math.sqrt(height / 8 / chord)));
        double[] shares = new double[count + 1];
        for (int k = 1; k < count; k++) {
            double wanted = sum[FINE] * k / count;
            int at = Arrays.binarySearch(sum, wanted);
            int above = at >= 0 ? at : -at - 1;
            shares[k] = (above - 1 + (wanted - sum[above - 1]) / (sum[above] - sum[above - 1])) / FINE;
        }
        shares[count] = 1;
        return shares;
    }

    /** The largest part of the height between two rings. */
    static double largestFall(double[] shares) {
        double most = 0;
        for (int k = 1; k < shares.length; k++) {
            most = Math.max(most, PocketForm.left(shares[k - 1]) - PocketForm.left(shares[k]));
        }
        return most;
    }
}
