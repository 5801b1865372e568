package org.garboard.flow.steps;

import java.util.Locale;

/**
 * The hollow that a planing surface leaves behind its edge, in beams: H = 0.17 (C + 0.03 L tau^1.5) sin((pi / C_V)
 * (X / 3)^1.5) above the surface's keel drawn on aft. See the package for what that is worth.
 *
 * @param speedCoefficient C_V
 * @param trim of the keel ahead of the edge [deg]: tau
 * @param deadrise there [deg]
 * @param wettedKeel ahead of the edge, in beams: L; 0 where it is not known, which puts the water's return farthest aft
 */
public record StepWake(double speedCoefficient, double trim, double deadrise, double wettedKeel) {
    /** As far aft of the edge as the contours were fitted, in beams. */
    static final double MOST_X = 3;
    private static final int LOOKS = 600;
    private static final int HALVINGS = 60;

    /** Where across the bottom. */
    public enum Place {
        CENTRELINE {
            @Override
            double coefficient(double deadrise) {
                return 1.5 + 0.5 * Math.max(0, Math.min(1, (deadrise - 10) / 10));
            }
        },
        QUARTER_BEAM {
            @Override
            double coefficient(double deadrise) {
                return 0.75;
            }
        };

        abstract double coefficient(double deadrise);
    }

    /** Where the water meets the bottom again. */
    public sealed interface Return permits After, Unknown {
    }

    /** @param beams aft of the edge */
    public record After(double beams) implements Return {
    }

    /** @param reason in words */
    public record Unknown(String reason) implements Return {
    }

    /** Height over the keel drawn on, in beams, so many beams aft of the edge. */
    public double height(Place place, double x) {
        return 0.17 * (place.coefficient(deadrise) + 0.03 * wettedKeel * Math.pow(trim, 1.5))
            * Math.sin(Math.PI / speedCoefficient * Math.pow(x / 3, 1.5));
    }

    /**
     * Where the water meets the bottom abaft of the step.
     *
     * @param step its height, in beams
     * @param rise of the bottom abaft of it against that ahead, for each beam aft
     */
    public Return meets(Place place, double step, double rise) {
        String outside = outside();
        if (!outside.isEmpty()) {
            return new Unknown(outside);
        }
        double before = 0;
        for (int i = 1; i <= LOOKS; i++) {
            double x = MOST_X * i / LOOKS;
            if (height(place, x) >= step + x * rise) {
                return new After(meeting(place, step, rise, before, x));
            }
            before = x;
        }
        return new Unknown("the water does not meet the bottom again within 3 beams, as far as the contours reach");
    }

    private double meeting(Place place, double step, double rise, double dry, double wet) {
        double low = dry;
        double high = wet;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (height(place, middle) >= step + middle * rise) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /** In words; empty within the range. */
    private String outside() {
        if (!(speedCoefficient >= 4 && speedCoefficient <= 8)) {
            return outside("speed coefficient", speedCoefficient, "4 to 8");
        }
        if (!(trim >= 3 && trim <= 5)) {
            return outside("trim of the keel ahead", trim, "3 to 5 deg");
        }
        return deadrise >= 10 && deadrise <= 30 ? "" : outside("deadrise", deadrise, "10 to 30 deg");
    }

    private static String outside(String what, double value, String range) {
        return String.format(Locale.ROOT, "%s %.2f is outside the contours' %s", what, value, range);
    }
}
