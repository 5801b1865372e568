package org.garboard.geometry;

/**
 * Cholesky factor of a symmetric positive definite band matrix.
 *
 * <p>Textbook algorithm: Golub and Van Loan, <i>Matrix Computations</i>, banded Cholesky (from memory).
 */
public final class BandedCholesky {
    private static final double RAISE = 1e-13;

    private final int n;
    private final int width;
    private final double[] lower;

    private BandedCholesky(int n, int width, double[] lower) {
        this.n = n;
        this.width = width;
        this.lower = lower;
    }

    /**
     * Factors a matrix.
     *
     * @param band entries with {@code band[i * (halfWidth + 1) + (j - i + halfWidth)]} = a(i, j) for
     *     j from i - halfWidth to i; overwritten
     * @param n rows
     * @param halfWidth diagonals below the main one
     */
    public static BandedCholesky factor(double[] band, int n, int halfWidth) {
        int stride = halfWidth + 1;
        for (int i = 0; i < n; i++) {
            int firstI = Math.max(0, i - halfWidth);
            int rowI = i * stride + halfWidth - i;
            for (int j = firstI; j <= i; j++) {
                int rowJ = j * stride + halfWidth - j;
                double sum = band[rowI + j];
                for (int k = Math.max(firstI, j - halfWidth); k < j; k++) {
                    sum -= band[rowI + k] * band[rowJ + k];
                }
                if (j < i) {
                    band[rowI + j] = sum / band[rowJ + j];
                } else if (sum > 0) {
                    band[rowI + i] = Math.sqrt(sum);
                } else {
                    throw new IllegalArgumentException("matrix is not positive definite at row " + i);
                }
            }
        }
        return new BandedCholesky(n, halfWidth, band);
    }

    /**
     * Factors a matrix of which the rounding of its large parts may have left nothing of its small ones: every
     * diagonal entry is raised first, by a share that is some hundred times the rounding of a double (our choice).
     * Parameters as for {@link #factor}.
     */
    public static BandedCholesky factorRaised(double[] band, int n, int halfWidth) {
        for (int i = halfWidth; i < band.length; i += halfWidth + 1) {
            band[i] *= 1 + RAISE;
        }
        return factor(band, n, halfWidth);
    }

    /** Solves in place: right-hand side in, solution out. */
    public void solve(double[] x) {
        int stride = width + 1;
        for (int i = 0; i < n; i++) {
            int row = i * stride + width - i;
            double sum = x[i];
            for (int k = Math.max(0, i - width); k < i; k++) {
                sum -= lower[row + k] * x[k];
            }
            x[i] = sum / lower[row + i];
        }
        for (int i = n - 1; i >= 0; i--) {
            int row = i * stride + width - i;
            double value = x[i] / lower[row + i];
            x[i] = value;
            for (int k = Math.max(0, i - width); k < i; k++) {
                x[k] -= lower[row + k] * value;
            }
        }
    }

    /**
     * The value of f' A^-1 f, by solving with the lower factor alone.
     *
     * @param f zero before an index; overwritten
     * @param from that index
     */
    public double inverseForm(double[] f, int from) {
        int stride = width + 1;
        double form = 0;
        for (int i = from; i < n; i++) {
            int row = i * stride + width - i;
            double sum = f[i];
            for (int k = Math.max(from, i - width); k < i; k++) {
                sum -= lower[row + k] * f[k];
            }
            f[i] = sum / lower[row + i];
            form += f[i] * f[i];
        }
        return form;
    }

    /**
     * The entries of the inverse that lie within the band, laid out as the matrix was; by the recurrence
     * of Takahashi, Fagan and Chin 1973 (from memory).
     */
    public double[] inverseBand() {
        int stride = width + 1;
        double[] inverse = new double[lower.length];
        for (int i = n - 1; i >= 0; i--) {
            double diagonal = lower[i * stride + width];
            int last = Math.min(n - 1, i + width);
            for (int j = last; j >= i; j--) {
                double sum = j == i ? 1 / diagonal : 0;
                int row = j * stride + width - j;
                for (int k = i + 1; k <= j; k++) {
                    sum -= lower[k * stride + width + i - k] * inverse[row + k];
                }
                for (int k = j + 1; k <= last; k++) {
                    sum -= lower[k * stride + width + i - k] * inverse[k * stride + width + j - k];
                }
                inverse[j * stride + width + i - j] = sum / diagonal;
            }
        }
        return inverse;
    }
}
