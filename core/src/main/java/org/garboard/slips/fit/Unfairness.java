package org.garboard.slips.fit;

/**
 * How unfair a row along the boat or a panel is: variation of curvature, the square of third derivatives, as
 * precisions [1/m2].
 */
public final class Unfairness {
    private static final int[] BINOMIAL = {1, 3, 3, 1};
    private static final double[][] ONE = {{1}};
    /** Keeps second derivatives and values that nothing tells of within some tens of metres; our choice. */
    private static final double LOOSE = 1e-3;
    /**
     * Largest entry that still leaves that much to be seen beside it in double precision. Only stations far closer
     * than the others reach it: there the shape is then taken to be a little less fair.
     */
    private static final double MOST = 1e11;

    private Unfairness() {
    }

    /**
     * @param log decimal logarithm of the weight of the third derivative
     * @param pace along the boat
     */
    public record OfRow(double log, Pace pace) {
    }

    /**
     * @param along decimal logarithm of the weight of the third derivative along
     * @param across the same across; mixed derivatives lie between
     * @param pace along the boat
     */
    public record OfPanel(double along, double across, Pace pace) {
    }

    public static void addRow(Net net, double[] band, int column, OfRow fairness) {
        addStiff(net, band, Math.pow(10, fairness.log()), net.along().gram(3, fairness.pace()), ONE, column);
        net.addProduct(band, LOOSE, net.along().gram(2, Pace.EVEN), ONE, column);
        net.addDiagonal(band, LOOSE, column, 1);
    }

    public static void addPanel(Net net, double[] band, int firstColumn, Across across, OfPanel fairness) {
        for (int d = 0; d <= 3; d++) {
            double weight = BINOMIAL[d] * Math.pow(10, ((3 - d) * fairness.along() + d * fairness.across()) / 3);
            addStiff(net, band, weight, net.along().gram(3 - d, fairness.pace()), across.gram(d), firstColumn);
        }
        net.addProduct(band, LOOSE, net.along().gram(2, Pace.EVEN), across.gram(0), firstColumn);
        net.addProduct(band, LOOSE, net.along().gram(0, Pace.EVEN), across.gram(2), firstColumn);
        net.addDiagonal(band, LOOSE, firstColumn, across.columns());
    }

    private static void addStiff(Net net, double[] band, double weight, double[][] along, double[][] across, int column) {
        double bearable = MOST / (largest(along) * largest(across));
        net.addProduct(band, Math.min(weight, bearable), along, across, column);
    }

    /** Of a matrix that is not negative the largest entry stands on the diagonal. */
    private static double largest(double[][] gram) {
        double largest = Double.MIN_NORMAL;
        for (int i = 0; i < gram.length; i++) {
            largest = Math.max(largest, gram[i][i]);
        }
        return largest;
    }
}
