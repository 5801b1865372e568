package org.garboard.acoustics.laminate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.garboard.units.Angle;

/**
 * Loss of sound through a solid skin from an element inside the hull, at one frequency.
 *
 * <p>The faces of the skin are parallel, so they do not turn the beam. An element that lies on the skin sends
 * its beam square through it, and off the vertical by the deadrise; one that stands plumb in a bath meets the
 * skin at an angle that is the deadrise.
 *
 * @param frequency [Hz]
 * @param asTold loss one way at the thickness as told [dB]
 * @param worst loss one way, the largest within the range of thickness [dB]
 * @param worstThickness where it is so [m]
 */
public record InHullLoss(double frequency, double asTold, double worst, double worstThickness) {
    /** How far a laid-up skin may differ from the thickness told: our choice, because hand lay-up varies that much. */
    public static final double THICKNESS_BAND = 0.10;
    /** Samples to the shorter (shear) wavelength across the band; between them the worst is searched. */
    private static final int PER_WAVELENGTH = 200;
    private static final int LEAST_SAMPLES = 40;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int NARROWINGS = 60;

    /** Out and back [dB], at worst. */
    public double worstTwoWay() {
        return 2 * worst;
    }

    /**
     * At each frequency of a transducer, in their order, a tenth of the thickness either way.
     *
     * @param thickness of the skin as told [m]
     * @param incidence at which the beam meets the skin: the deadrise for an element plumb in a bath, 0 for one
     *     bonded flat
     * @param frequencies [Hz], not changed and not kept
     */
    public static List<InHullLoss> through(Solid skin, double thickness, Fluid water, Angle incidence, double... frequencies) {
        return through(skin, thickness, thickness, water, incidence, frequencies);
    }

    /**
     * The same of a skin that reads from one thickness to another near there: the range goes a tenth beyond
     * both, and what is as told is told of the thickest.
     *
     * @param smallest thickness [m]
     * @param largest thickness [m]
     */
    public static List<InHullLoss> through(Solid skin, double smallest, double largest, Fluid water, Angle incidence,
                                           double... frequencies) {
        List<InHullLoss> losses = new ArrayList<>();
        for (double frequency : frequencies) {
            losses.add(at(skin, smallest, largest, water, incidence, frequency));
        }
        return losses;
    }

    /** The largest of them, by the worst. */
    public static InHullLoss governing(List<InHullLoss> losses) {
        return losses.stream().reduce((a, b) -> b.worst() > a.worst() ? b : a)
            .orElseThrow(() -> new IllegalArgumentException("no frequency is told"));
    }

    private static InHullLoss at(Solid skin, double smallest, double largest, Fluid water, Angle incidence, double frequency) {
        Positive.require("frequency", frequency, "Hz");
        double least = smallest * (1 - THICKNESS_BAND);
        double band = largest * (1 + THICKNESS_BAND) - least;
        int steps = Math.max(LEAST_SAMPLES, (int) Math.ceil(PER_WAVELENGTH * band * frequency / skin.shear()));
        double[] loss = new double[steps + 1];
        Arrays.setAll(loss, i -> loss(skin, least + band * i / steps, water, incidence, frequency));
        double worst = Double.NEGATIVE_INFINITY;
        double where = least;
        for (int i = 0; i <= steps; i++) {
            if (loss[i] > worst) {
                worst = loss[i];
                where = least + band * i / steps;
            }
        }
        double low = Math.max(least, where - band / steps);
        double high = Math.min(least + band, where + band / steps);
        for (int i = 0; i < NARROWINGS; i++) {
            double left = high - GOLDEN * (high - low);
            double right = low + GOLDEN * (high - low);
            if (loss(skin, left, water, incidence, frequency) > loss(skin, right, water, incidence, frequency)) {
                high = right;
            } else {
                low = left;
            }
        }
        double between = loss(skin, 0.5 * (low + high), water, incidence, frequency);
        return new InHullLoss(frequency, loss(skin, largest, water, incidence, frequency),
            Math.max(worst, between), between > worst ? 0.5 * (low + high) : where);
    }

    private static double loss(Solid skin, double thickness, Fluid water, Angle incidence, double frequency) {
        return new ElasticPlate(skin, thickness).passage(water, water, frequency, incidence).lossDecibels();
    }
}
