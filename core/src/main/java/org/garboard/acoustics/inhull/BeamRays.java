package org.garboard.acoustics.inhull;

import org.garboard.acoustics.beam.Element;
import org.garboard.units.Angle;

/** Directions within the main lobe of a beam, each with the share of the power that goes that way. */
final class BeamRays {
    private static final int RINGS = 24;
    private static final int SPOKES = 24;
    private static final double WIDEST_DEG = 80;

    private final double[] along;
    private final double[] across;
    private final double[] power;

    /** Even rings out to the first null, weighted by the square of the response and by the solid angle of each. */
    BeamRays(Element element) {
        along = new double[RINGS * SPOKES];
        across = new double[RINGS * SPOKES];
        power = new double[RINGS * SPOKES];
        double edge = Math.max(edge(element, Element.Plane.ATHWART), edge(element, Element.Plane.FORE_AND_AFT));
        double sum = 0;
        for (int ring = 0; ring < RINGS; ring++) {
            double off = edge * (ring + 0.5) / RINGS;
            for (int spoke = 0; spoke < SPOKES; spoke++) {
                double turn = 2 * Math.PI * (spoke + 0.5) / SPOKES;
                int ray = ring * SPOKES + spoke;
                along[ray] = Math.cos(off);
                across[ray] = Math.sin(off) * Math.sin(turn);
                double tan = Math.tan(off);
                double response = element.response(Angle.ofRadians(Math.atan(tan * Math.cos(turn))), Angle.ofRadians(Math.atan(tan * Math.sin(turn))));
                power[ray] = response * response * Math.sin(off);
                sum += power[ray];
            }
        }
        for (int ray = 0; ray < power.length; ray++) {
            power[ray] /= sum;
        }
    }

    private static double edge(Element element, Element.Plane plane) {
        double widest = Math.toRadians(WIDEST_DEG);
        return element.firstNull(plane).map(angle -> Math.min(widest, angle.radians())).orElse(widest);
    }

    int count() {
        return power.length;
    }

    double power(int ray) {
        return power[ray];
    }

    /** Cosine of a ray's angle to the normal of a skin that the axis meets at an angle, tilted athwart. */
    double cosine(int ray, double cosIncidence, double sinIncidence) {
        return along[ray] * cosIncidence + across[ray] * sinIncidence;
    }
}
