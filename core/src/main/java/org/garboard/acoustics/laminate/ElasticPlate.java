package org.garboard.acoustics.laminate;

import org.garboard.units.Angle;
import org.hipparchus.complex.Complex;

/**
 * One even elastic plate between two fluids, met by a plane wave at any angle. A plate that only knew
 * compression would serve up to about ten degrees; further out shear carries the sound.
 *
 * @param material of the plate
 * @param thickness [m]
 */
public record ElasticPlate(Solid material, double thickness) {
    private static final int R = 0;
    private static final int T = 1;
    private static final int L_DOWN = 2;
    private static final int L_UP = 3;
    private static final int S_DOWN = 4;
    private static final int S_UP = 5;
    private static final int RIGHT = 6;

    public ElasticPlate {
        Positive.require("thickness of a plate of " + material.name(), thickness, "m");
    }

    /**
     * What becomes of a plane wave.
     *
     * <p>Time e^(-iwt), z from the first face to the second. Pressure before the plate e^(i az z) + R e^(-i az z),
     * behind it T e^(i bz (z-d)); potentials in it phi = L+ e^(i lz z) + L- e^(i lz (d-z)), psi likewise with S and
     * sz; u = grad phi + curl psi. At both faces u_z and sigma_zz = -p are continuous and sigma_xz = 0. The six
     * unknowns are solved for together, with potentials in units of rho w^2 and displacements in units of
     * 1/(rho w^2 k), so that every equation is of order one; then (lambda kL^2 + 2 mu lz^2) becomes 1 - 2 kx^2/kS^2.
     *
     * @param frequency [Hz]
     * @param incidence from the plate's normal, less than a right angle
     * @see "L. M. Brekhovskikh, Waves in Layered Media, from memory; T + R = 1 and normal incidence confirm it"
     */
    public Passage passage(Fluid before, Fluid behind, double frequency, Angle incidence) {
        double w = 2 * Math.PI * frequency;
        double k = w / before.speed();
        double kx = k * Math.sin(incidence.radians());
        double az = k * Math.cos(incidence.radians());
        double bz2 = w * w / (behind.speed() * behind.speed()) - kx * kx;
        Complex bz = bz2 >= 0 ? new Complex(Math.sqrt(bz2)) : new Complex(0, Math.sqrt(-bz2));
        Complex kL = new Complex(w / material.longitudinal(), material.attenuation(frequency));
        Complex kS = new Complex(w / material.shear(), material.shearAttenuation(frequency));
        Complex lz = kL.multiply(kL).subtract(kx * kx).sqrt();
        Complex sz = kS.multiply(kS).subtract(kx * kx).sqrt();
        Complex perShear = kS.multiply(kS).reciprocal();
        Complex one = perShear.multiply(-2 * kx * kx).add(1);
        Complex shear = perShear.multiply(sz).multiply(2 * kx);
        Complex slide = perShear.multiply(lz).multiply(2 * kx);
        Complex el = lz.multiply(Complex.I).multiply(thickness).exp();
        Complex es = sz.multiply(Complex.I).multiply(thickness).exp();

        ComplexSystem equations = new ComplexSystem(6);
        double lighter = material.density() / before.density();
        double ahead = material.density() / behind.density();
        Face first = new Face(equations, 0, Complex.ONE, el, Complex.ONE, es);
        first.displacement(lz.divide(k), new Complex(kx / k));
        put(equations, 0, R, new Complex(lighter * az / k));
        put(equations, 0, RIGHT, new Complex(lighter * az / k));
        first.pressure(one, shear);
        put(equations, 1, R, Complex.ONE);
        put(equations, 1, RIGHT, Complex.ONE.negate());
        first.slide(slide, one);
        Face second = new Face(equations, 3, el, Complex.ONE, es, Complex.ONE);
        second.displacement(lz.divide(k), new Complex(kx / k));
        put(equations, 3, T, bz.multiply(-ahead / k));
        second.pressure(one, shear);
        put(equations, 4, T, Complex.ONE);
        second.slide(slide, one);
        equations.solve();
        double through = bz2 >= 0 ? equations.power(T) * bz.getReal() / az * before.density() / behind.density() : 0;
        return new Passage(through, equations.power(R));
    }

    private static void put(ComplexSystem equations, int row, int column, Complex value) {
        equations.set(row, column, value.getReal(), value.getImaginary());
    }

    /** The three equations of one face: the size that each wave has there, and what it brings. */
    private record Face(ComplexSystem equations, int row, Complex lDown, Complex lUp, Complex sDown, Complex sUp) {

        void displacement(Complex ofL, Complex ofS) {
            write(row, ofL, ofL.negate(), ofS, ofS);
        }

        /** sigma_zz + p, where p stands elsewhere. */
        void pressure(Complex ofL, Complex ofS) {
            write(row + 1, ofL.negate(), ofL.negate(), ofS.negate(), ofS);
        }

        void slide(Complex ofL, Complex ofS) {
            write(row + 2, ofL.negate(), ofL, ofS, ofS);
        }

        private void write(int line, Complex down, Complex up, Complex shearDown, Complex shearUp) {
            put(equations, line, L_DOWN, down.multiply(lDown));
            put(equations, line, L_UP, up.multiply(lUp));
            put(equations, line, S_DOWN, shearDown.multiply(sDown));
            put(equations, line, S_UP, shearUp.multiply(sUp));
        }
    }
}
