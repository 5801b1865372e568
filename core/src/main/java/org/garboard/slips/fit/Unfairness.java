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
    /** Keeps the matrices regular in double precision beside large weights. */
    private static final double SHARE = 1e-11;

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
        double weight = Math.pow(10, fairness.log());
        double loose = LOOSE + SHARE * weight;
        net.addProduct(band, weight, net.along().gram(3, fairness.pace()), ONE, column);
        net.addProduct(band, loose, net.along().gram(2, Pace.EVEN), ONE, column);
        net.addProduct(band, loose, net.along().gram(0, Pace.EVEN), ONE, column);
    }

    public static void addPanel(Net net, double[] band, int firstColumn, Across across, OfPanel fairness) {
        for (int d = 0; d <= 3; d++) {
            double weight = BINOMIAL[d] * Math.pow(10, ((3 - d) * fairness.along() + d * fairness.across()) / 3);
            net.addProduct(band, weight, net.along().gram(3 - d, fairness.pace()), across.gram(d), firstColumn);
        }
        double loose = LOOSE + SHARE * Math.pow(10, Math.max(fairness.along(), fairness.across()));
        net.addProduct(band, loose, net.along().gram(2, Pace.EVEN), across.gram(0), firstColumn);
        net.addProduct(band, loose, net.along().gram(0, Pace.EVEN), across.gram(2), firstColumn);
        net.addProduct(band, loose, net.along().gram(0, Pace.EVEN), across.gram(0), firstColumn);
    }
}
