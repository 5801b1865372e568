package org.garboard.flow.cavitation;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A strut or planform with the symmetric four-digit section, the flow along it.
 *
 * @param ratio of thickness to length, 0.03 to 0.30
 * @see "I. H. Abbott, A. E. von Doenhoff, Theory of Wing Sections, ch. 6: ordinates"
 */
public record Foil(double ratio) implements Suction {
    private static final int PANELS = 160;

    public Foil {
        if (!(ratio >= 0.03 && ratio <= 0.30)) {
            throw new IllegalArgumentException("foil of thickness ratio " + ratio + "; it must be from 0.03 to 0.30");
        }
    }

    /** Half of the thickness over the length, at a share of the length from the nose. */
    public double ordinate(double x) {
        return 5 * ratio * (0.2969 * Math.sqrt(x) + x * (-0.1260 + x * (-0.3516 + x * (0.2843 - 0.1015 * x))));
    }

    /** Radius of the nose over the length. */
    public double noseRadius() {
        return 0.5 * Math.pow(5 * ratio * 0.2969, 2);
    }

    @Override
    public Answer answer() {
        return new Coefficient(section().leastPressure());
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
