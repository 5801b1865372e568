package org.garboard.flow.cavitation;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The symmetric four-digit section, the flow along it: a body whose figures are published, for panels to be checked on.
 *
 * @param ratio of thickness to length, 0.03 to 0.30
 * @see "I. H. Abbott, A. E. von Doenhoff, Theory of Wing Sections, ch. 6: ordinates"
 */
record Foil(double ratio) {
    private static final int PANELS = 160;

    /** Half of the thickness over the length, at a share of the length from the nose. */
    double ordinate(double x) {
        return 5 * ratio * (0.2969 * Math.sqrt(x) + x * (-0.1260 + x * (-0.3516 + x * (0.2843 - 0.1015 * x))));
    }

    /** Radius of the nose over the length. */
    double noseRadius() {
        return 0.5 * Math.pow(5 * ratio * 0.2969, 2);
    }

    /** Crowded at both ends; the tail, left open by the ordinates, is drawn together there. */
    SymmetricSection section() {
        List<Vector2D> outline = new ArrayList<>();
        for (int i = 0; i <= PANELS; i++) {
            double x = 0.5 * (1 - Math.cos(Math.PI * i / PANELS));
            outline.add(Vector2D.of(x, ordinate(x) - x * ordinate(1)));
        }
        return new SymmetricSection(outline);
    }
}
