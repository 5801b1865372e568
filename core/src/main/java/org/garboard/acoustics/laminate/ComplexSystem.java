package org.garboard.acoustics.laminate;

/** A few linear equations in complex numbers: elimination with the largest pivot of each column. */
final class ComplexSystem {
    private final int size;
    private final double[][] re;
    private final double[][] im;

    /** Equations with nothing in them; the right side stands in column {@code size}. */
    ComplexSystem(int size) {
        this.size = size;
        this.re = new double[size][size + 1];
        this.im = new double[size][size + 1];
    }

    void set(int row, int column, double real, double imaginary) {
        re[row][column] = real;
        im[row][column] = imaginary;
    }

    /** Replaces the right side by the solution. */
    void solve() {
        for (int column = 0; column < size; column++) {
            bringUpPivot(column);
            double pr = re[column][column];
            double pi = im[column][column];
            double square = pr * pr + pi * pi;
            for (int row = 0; row < size; row++) {
                if (row != column) {
                    double fr = (re[row][column] * pr + im[row][column] * pi) / square;
                    double fi = (im[row][column] * pr - re[row][column] * pi) / square;
                    subtract(row, column, fr, fi);
                }
            }
        }
    }

    /** Square of the size of an unknown, after {@link #solve}. */
    double power(int unknown) {
        double square = re[unknown][unknown] * re[unknown][unknown] + im[unknown][unknown] * im[unknown][unknown];
        return (re[unknown][size] * re[unknown][size] + im[unknown][size] * im[unknown][size]) / square;
    }

    private void bringUpPivot(int column) {
        int best = column;
        for (int row = column + 1; row < size; row++) {
            if (Math.hypot(re[row][column], im[row][column]) > Math.hypot(re[best][column], im[best][column])) {
                best = row;
            }
        }
        double[] swap = re[column];
        re[column] = re[best];
        re[best] = swap;
        swap = im[column];
        im[column] = im[best];
        im[best] = swap;
    }

    private void subtract(int row, int pivot, double fr, double fi) {
        for (int column = pivot; column <= size; column++) {
            re[row][column] -= fr * re[pivot][column] - fi * im[pivot][column];
            im[row][column] -= fr * im[pivot][column] + fi * re[pivot][column];
        }
    }
}
