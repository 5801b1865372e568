package org.garboard.acoustics.laminate;

import java.util.List;
import org.hipparchus.complex.Complex;

/**
 * Layers one on the other, such as skin, core and skin, perfectly bonded; sound square through them.
 * A bond with air in it lets next to nothing through, whatever this says.
 *
 * @param layers in the order in which sound meets them, one at least
 */
public record LayeredSkin(List<Layer> layers) {
    public LayeredSkin {
        layers = List.copyOf(layers);
        if (layers.isEmpty()) {
            throw new IllegalArgumentException("a skin has one layer at least");
        }
    }

    /** A core between two skins alike; thicknesses in metres. */
    public static LayeredSkin cored(Solid skin, double skinThickness, Solid core, double coreThickness) {
        return new LayeredSkin(List.of(new Layer(skin, skinThickness), new Layer(core, coreThickness),
            new Layer(skin, skinThickness)));
    }

    /** All layers [m]. */
    public double thickness() {
        return layers.stream().mapToDouble(Layer::thickness).sum();
    }

    /**
     * Share of the power that goes through, 0 to 1, loss counted.
     *
     * <p>Transfer matrices [cos kd, i z sin kd; (i/z) sin kd, cos kd], time e^(+iwt), k = w/c - i alpha and
     * z = rho w/k in each layer.
     *
     * @param frequency [Hz]
     * @see "L. M. Brekhovskikh, Waves in Layered Media; from memory, confirmed by the closed form of one plate and by the
     *     elastic plate at normal incidence"
     */
    public double transmission(Fluid before, Fluid behind, double frequency) {
        double w = 2 * Math.PI * frequency;
        Complex a = Complex.ONE;
        Complex b = Complex.ZERO;
        Complex c = Complex.ZERO;
        Complex d = Complex.ONE;
        for (Layer layer : layers) {
            Solid material = layer.material();
            Complex k = new Complex(w / material.longitudinal(), -material.attenuation(frequency));
            Complex z = k.reciprocal().multiply(material.density() * w);
            Complex cos = k.multiply(layer.thickness()).cos();
            Complex iSin = k.multiply(layer.thickness()).sin().multiply(Complex.I);
            Complex nextA = a.multiply(cos).add(b.multiply(iSin).divide(z));
            Complex nextB = a.multiply(iSin).multiply(z).add(b.multiply(cos));
            Complex nextC = c.multiply(cos).add(d.multiply(iSin).divide(z));
            Complex nextD = c.multiply(iSin).multiply(z).add(d.multiply(cos));
            a = nextA;
            b = nextB;
            c = nextC;
            d = nextD;
        }
        double zIn = before.impedance();
        double zOut = behind.impedance();
        Complex sum = a.add(b.divide(zOut)).add(c.multiply(zIn)).add(d.multiply(zIn / zOut));
        double amplitude = 2 / sum.norm();
        return amplitude * amplitude * zIn / zOut;
    }
}
