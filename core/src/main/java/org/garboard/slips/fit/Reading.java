package org.garboard.slips.fit;

/**
 * A cell of the table as a measured value, linear in the columns at its station. Owns its arrays.
 */
public final class Reading {
    private final int station;
    private final int[] columns;
    private final double[] factors;
    private final double value;
    private final double bluntness;

    /**
     * @param columns which it feels
     * @param factors how much of each
     * @param value measured [m]
     * @param bluntness how many times less sure it is than its rounding alone
     */
    public Reading(int station, int[] columns, double[] factors, double value, double bluntness) {
        this.station = station;
        this.columns = columns;
        this.factors = factors;
        this.value = value;
        this.bluntness = bluntness;
    }

    /** A value of one column. */
    public static Reading of(int station, int column, double value) {
        return new Reading(station, new int[] {column}, new double[] {1}, value, 1);
    }

    /** The same over other columns: old column c is column at[c]; none if one of them has no place there. */
    public Reading over(int[] at) {
        int[] moved = new int[columns.length];
        for (int a = 0; a < moved.length; a++) {
            moved[a] = at[columns[a]];
            if (moved[a] < 0) {
                return null;
            }
        }
        return new Reading(station, moved, factors, value, bluntness);
    }

    /** The same, so many times less sure. */
    public Reading blunted(double times) {
        return new Reading(station, columns, factors, value, bluntness * times);
    }

    public double bluntness() {
        return bluntness;
    }

    /** Adds its square to a band and its value to a right-hand side. */
    void add(Net net, double precision, double[] band, double[] right) {
        int first = net.along().firstFunction(station);
        double weight = precision / (bluntness * bluntness);
        for (int i = 0; i < 4; i++) {
            for (int a = 0; a < columns.length; a++) {
                int row = net.unknown(first + i, columns[a]);
                double factor = weight * net.along().basis(station, i) * factors[a];
                right[row] += factor * value;
                for (int j = 0; j <= i; j++) {
                    for (int c = 0; c < columns.length; c++) {
                        int column = net.unknown(first + j, columns[c]);
                        if (column <= row) {
                            band[net.entry(row, column)] += factor * net.along().basis(station, j) * factors[c];
                        }
                    }
                }
            }
        }
    }

    /** Adds a multiple of itself to a vector of unknowns. */
    void spread(Net net, double multiple, double[] into) {
        int first = net.along().firstFunction(station);
        for (int i = 0; i < 4; i++) {
            double weight = multiple * net.along().basis(station, i);
            for (int a = 0; a < columns.length; a++) {
                into[net.unknown(first + i, columns[a])] += weight * factors[a];
            }
        }
    }

    /** What a solution gives for it. */
    public double of(Net net, double[] solution) {
        double sum = 0;
        for (int a = 0; a < columns.length; a++) {
            sum += factors[a] * net.value(solution, station, columns[a]);
        }
        return sum;
    }

    public double value() {
        return value;
    }

    /** The first unknown that it can feel. */
    int firstUnknown(Net net) {
        return net.unknown(net.along().firstFunction(station), 0);
    }
}
