package org.garboard.slips.fit;

/** Unknown poles of splines along the boat, side by side in columns, numbered column by column from forward aft. */
public final class Net {
    private final Along along;
    private final int columns;
    private final int halfWidth;

    public Net(Along along, int columns) {
        this.along = along;
        this.columns = columns;
        this.halfWidth = Math.min(size(), 4 * columns) - 1;
    }

    public Along along() {
        return along;
    }

    public int size() {
        return along.functions() * columns;
    }

    int halfWidth() {
        return halfWidth;
    }

    /** Number of an unknown: the function along, the column across. */
    public int unknown(int function, int column) {
        return function * columns + column;
    }

    public double[] emptyBand() {
        return new double[size() * (halfWidth + 1)];
    }

    /** Where an entry on or below the diagonal stands in a band. */
    int entry(int row, int column) {
        return row * (halfWidth + 1) + column - row + halfWidth;
    }

    /** What a solution gives for a column at a station. */
    public double value(double[] solution, int station, int column) {
        double sum = 0;
        int first = along.firstFunction(station);
        for (int i = 0; i < 4; i++) {
            sum += along.basis(station, i) * solution[unknown(first + i, column)];
        }
        return sum;
    }

    /** Adds to the diagonal of some columns. */
    void addDiagonal(double[] band, double weight, int firstColumn, int count) {
        for (int i = 0; i < along.functions(); i++) {
            for (int c = firstColumn; c < firstColumn + count; c++) {
                band[entry(unknown(i, c), unknown(i, c))] += weight;
            }
        }
    }

    /** Adds weight times the product of a measure along and one across, over columns from the first. */
    void addProduct(double[] band, double weight, double[][] measureAlong, double[][] measureAcross, int first) {
        for (int i = 0; i < measureAlong.length; i++) {
            for (int j = Math.max(0, i - 3); j <= i; j++) {
                double factor = weight * measureAlong[i][j];
                for (int k = 0; k < measureAcross.length; k++) {
                    int row = unknown(i, first + k);
                    for (int l = 0; l < measureAcross.length; l++) {
                        int column = unknown(j, first + l);
                        if (column <= row) {
                            band[entry(row, column)] += factor * measureAcross[k][l];
                        }
                    }
                }
            }
        }
    }
}
