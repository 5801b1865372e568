package org.garboard.acoustics.inhull;

import org.garboard.acoustics.beam.Element;
import org.garboard.acoustics.laminate.ElasticPlate;
import org.garboard.acoustics.laminate.Fluid;
import org.garboard.acoustics.laminate.InHullLoss;
import org.garboard.acoustics.laminate.Solid;
import org.garboard.units.Angle;

/**
 * What a solid skin lets through at one frequency, by angle and thickness, worked out once for many beams and places.
 *
 * <p>A beam is many plane waves; each goes through by {@link ElasticPlate}, and what comes through is the mean of their powers,
 * each counted as the beam sends that way. Of thicknesses the worst counts, a tenth beyond the smallest and the largest told.
 */
public final class SkinPassage {
    /** Between angles [deg]: our choice; the mean over a beam of 5 deg moves by less than 0.1 dB at half of it. */
    private static final double STEP_DEG = 0.5;
    private static final int ANGLES = (int) (90 / STEP_DEG);
    /** Samples to the shear wavelength across the range of thickness, and the least of them. */
    private static final int PER_WAVELENGTH = 60;
    private static final int LEAST = 40;

    private final double frequency;
    private final double least;
    private final double thinnerBy;
    private final int thicknesses;
    private final double[] through;

    private SkinPassage(double frequency, double least, double thinnerBy, int thicknesses) {
        this.frequency = frequency;
        this.least = least;
        this.thinnerBy = thinnerBy;
        this.thicknesses = thicknesses;
        this.through = new double[thicknesses * (ANGLES + 1)];
    }

    /**
     * @param smallest thickness told near there [m]
     * @param largest thickness told near there [m]
     * @param water on both sides
     * @param frequency [Hz]
     */
    public static SkinPassage of(Solid skin, double smallest, double largest, Fluid water, double frequency) {
        double least = smallest * (1 - InHullLoss.THICKNESS_BAND);
        double band = largest * (1 + InHullLoss.THICKNESS_BAND) - least;
        int thicknesses = 1 + Math.max(LEAST, (int) Math.ceil(PER_WAVELENGTH * band * frequency / skin.shear()));
        SkinPassage passage = new SkinPassage(frequency, least, band / (thicknesses - 1), thicknesses);
        for (int d = 0; d < thicknesses; d++) {
            ElasticPlate plate = new ElasticPlate(skin, passage.thickness(d));
            for (int a = 0; a < ANGLES; a++) {
                passage.through[d * (ANGLES + 1) + a] = plate.passage(water, water, frequency, Angle.ofDegrees(a * STEP_DEG)).transmitted();
            }
            // along the skin nothing goes through it
            passage.through[d * (ANGLES + 1) + ANGLES] = 0;
        }
        return passage;
    }

    public double frequency() {
        return frequency;
    }

    private double thickness(int d) {
        return least + d * thinnerBy;
    }

    /**
     * Loss of a beam one way, the worst over the thicknesses.
     *
     * @param loss [dB]
     * @param thickness where it is so [m]
     */
    public record Worst(double loss, double thickness) {
    }

    /** @param incidence of the axis on the skin */
    public Worst of(Element element, Angle incidence) {
        return of(new BeamRays(element), incidence.radians());
    }

    Worst of(BeamRays rays, double incidence) {
        double cos = Math.cos(incidence);
        double sin = Math.sin(incidence);
        double[] mean = new double[thicknesses];
        for (int ray = 0; ray < rays.count(); ray++) {
            double cosine = rays.cosine(ray, cos, sin);
            if (cosine > 0) {
                double place = Math.toDegrees(Math.acos(Math.min(1, cosine))) / STEP_DEG;
                int a = Math.min(ANGLES - 1, (int) place);
                double beyond = place - a;
                for (int d = 0; d < thicknesses; d++) {
                    int at = d * (ANGLES + 1) + a;
                    mean[d] += rays.power(ray) * (through[at] + beyond * (through[at + 1] - through[at]));
                }
            }
        }
        int worst = 0;
        for (int d = 1; d < thicknesses; d++) {
            worst = mean[d] < mean[worst] ? d : worst;
        }
        return new Worst(-10 * Math.log10(mean[worst]), thickness(worst));
    }

    /** The same for every angle at which the axis may meet the skin. */
    public LossByIncidence by(Element element) {
        BeamRays rays = new BeamRays(element);
        return LossByIncidence.of(incidence -> of(rays, incidence).loss());
    }
}
