package org.garboard.flow.cavitation;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;

/**
 * Plane potential flow along a symmetric section: panels of constant source strength on the upper side and their
 * mirror images below.
 *
 * @see "J. L. Hess, A. M. O. Smith, Progress in Aerospace Sciences 8, 1967; from memory"
 */
final class SymmetricSection {
    private final double[] x;
    private final double[] y;
    private final double[] speed;

    /** @param outline upper side from the nose aft, both ends on the line of symmetry; the stream runs along x */
    SymmetricSection(List<Vector2D> outline) {
        int n = outline.size() - 1;
        x = new double[n];
        y = new double[n];
        speed = new double[n];
        double[][] across = new double[n][n];
        double[][] along = new double[n][n];
        double[] meets = new double[n];
        for (int i = 0; i < n; i++) {
            Vector2D place = outline.get(i).lerp(outline.get(i + 1), 0.5);
            Vector2D tangent = outline.get(i + 1).subtract(outline.get(i)).normalize();
            x[i] = place.getX();
            y[i] = place.getY();
            meets[i] = tangent.getY();
            for (int j = 0; j < n; j++) {
                // at its own middle half of what a panel gives leaves to the upper side
                Vector2D own = i == j ? Vector2D.of(-0.5 * tangent.getY(), 0.5 * tangent.getX()) : velocity(outline.get(j), outline.get(j + 1), place);
                Vector2D image = velocity(outline.get(j), outline.get(j + 1), Vector2D.of(place.getX(), -place.getY()));
                Vector2D both = Vector2D.of(own.getX() + image.getX(), own.getY() - image.getY());
                across[i][j] = tangent.getX() * both.getY() - tangent.getY() * both.getX();
                along[i][j] = tangent.dot(both);
            }
        }
        double[] strength = new LUDecomposition(new Array2DRowRealMatrix(across, false)).getSolver().solve(new ArrayRealVector(meets, false)).toArray();
        for (int i = 0; i < n; i++) {
            Vector2D tangent = outline.get(i + 1).subtract(outline.get(i)).normalize();
            speed[i] = tangent.getX();
            for (int j = 0; j < n; j++) {
                speed[i] += along[i][j] * strength[j];
            }
        }
    }

    /** Of a panel of unit strength. */
    private static Vector2D velocity(Vector2D from, Vector2D to, Vector2D place) {
        Vector2D tangent = to.subtract(from);
        double length = tangent.norm();
        tangent = tangent.normalize();
        Vector2D off = place.subtract(from);
        double s = off.dot(tangent);
        double h = tangent.signedArea(off);
        double along = Math.log((s * s + h * h) / ((s - length) * (s - length) + h * h)) / (4 * Math.PI);
        double across = (Math.atan2(h, s - length) - Math.atan2(h, s)) / (2 * Math.PI);
        return Vector2D.of(along * tangent.getX() - across * tangent.getY(), along * tangent.getY() + across * tangent.getX());
    }

    /** Panels of the upper side. */
    int size() {
        return x.length;
    }

    /** x of a panel's middle. */
    double x(int panel) {
        return x[panel];
    }

    /** Speed there over the stream's. */
    double speed(int panel) {
        return speed[panel];
    }

    /** Pressure coefficient of the fastest panel. */
    double leastPressure() {
        double fastest = 0;
        for (double each : speed) {
            fastest = Math.max(fastest, Math.abs(each));
        }
        return 1 - fastest * fastest;
    }
}
