package org.garboard.flow.planing;

import org.garboard.units.Angle;

/**
 * A prism running at a trim with a mean wetted length.
 *
 * @param prism the bottom
 * @param stream the water
 * @param trim of the keel, positive bow-up
 * @param beams mean wetted length over the beam
 * @param bottomSpeed mean velocity of the water along the bottom [m/s]
 * @param friction along the bottom [N]
 * @param drag whole, level, of the bare bottom: no air, no appendages, no spray [N]
 * @param pressureCentre forward of the transom along the keel [m]
 * @param moment left about the centre of gravity, positive bow-down [N m]; NaN where no loading was told
 */
public record PrismRun(Prism prism, Stream stream, Angle trim, double beams, double bottomSpeed, double friction,
                       double drag, double pressureCentre, double moment) {

    /** What the bottom carries by (15) and (16) [N]. */
    public double lift() {
        return lift(prism, stream, trim, beams);
    }

    static double lift(Prism prism, Stream stream, Angle trim, double beams) {
        double flat = Savitsky.flatLift(trim.degrees(), beams, prism.speedCoefficient(stream));
        return Savitsky.deadriseLift(flat, prism.deadrise().degrees()) * stream.pressure() * prism.beam() * prism.beam();
    }

    /** Wetted length of the keel [m], (4). */
    public double wettedKeel() {
        return prism.beam() * (beams + 0.5 * keelLessChine());
    }

    /** Wetted length of the chine [m]; negative where the chines are dry. */
    public double wettedChine() {
        return prism.beam() * (beams - 0.5 * keelLessChine());
    }

    private double keelLessChine() {
        return Savitsky.keelLessChine(trim.degrees(), prism.deadrise().degrees());
    }

    /** Draught of the keel at the transom below the level water [m], (4). */
    public double draught() {
        return wettedKeel() * Math.sin(trim.radians());
    }

    /** Angle of the stagnation line to the keel, in plan. */
    public Angle stagnationAngle() {
        return prism.stagnationAngle(trim);
    }

    /** The stagnation line: distance forward of the transom at a half-breadth [m]. */
    public double stagnationAt(double y) {
        return wettedKeel() - (wettedKeel() - wettedChine()) * Math.abs(y) / (0.5 * prism.beam());
    }

    /** Speed coefficient. */
    public double speedCoefficient() {
        return prism.speedCoefficient(stream);
    }
}
