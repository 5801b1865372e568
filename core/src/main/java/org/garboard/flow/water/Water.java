package org.garboard.flow.water;

import org.garboard.units.FixedDecimal;

/**
 * Water of one temperature and salinity at the pressure of the atmosphere.
 *
 * @param temperatureCelsius from 0 to 40
 * @param salinity grams of salt to a kilogram of water, from 0 (fresh) to 42
 */
public record Water(double temperatureCelsius, double salinity) {
    /**
     * Standard sea water. Our choice of digits: with this salinity EOS-80 reproduces the densities that the
     * towing tanks use (ITTC 7.5-02-01-03, as other texts quote them) to 0.006 kg/m3 from 1 to 30 degrees.
     */
    public static final double SEA_SALINITY = 35.0623;
    public static final double MOST_CELSIUS = 40;
    public static final double MOST_SALINITY = 42;
    /** The standard atmosphere [Pa]. */
    public static final double ATMOSPHERE = 101_325;
    /** Standard acceleration of free fall [m/s2]. */
    public static final double GRAVITY = 9.80665;

    public Water {
        require("temperature", temperatureCelsius, MOST_CELSIUS, "degrees Celsius");
        require("salinity", salinity, MOST_SALINITY, "g/kg");
    }

    public static Water fresh(double temperatureCelsius) {
        return new Water(temperatureCelsius, 0);
    }

    /** Standard sea water, {@link #SEA_SALINITY}. */
    public static Water sea(double temperatureCelsius) {
        return new Water(temperatureCelsius, SEA_SALINITY);
    }

    /** Density [kg/m3]. */
    public double density() {
        return WaterDensity.eos80(temperatureCelsius, salinity);
    }

    /** Dynamic viscosity [Pa s]. */
    public double dynamicViscosity() {
        return WaterViscosity.dynamic(temperatureCelsius, salinity);
    }

    /** Kinematic viscosity [m2/s]. */
    public double viscosity() {
        return dynamicViscosity() / density();
    }

    /** Vapour pressure [Pa]. */
    public double vapourPressure() {
        return VapourPressure.over(temperatureCelsius, salinity);
    }

    /** Speed of sound at the surface [m/s]. */
    public double soundSpeed() {
        return SoundSpeed.chenMillero(temperatureCelsius, salinity, 0);
    }

    private static void require(String what, double value, double most, String unit) {
        if (!(value >= 0 && value <= most)) {
            throw new IllegalArgumentException("water: " + what + " is "
                + (Double.isFinite(value) ? FixedDecimal.format(value, 3) : value) + " " + unit + "; it must be from 0 to "
                + FixedDecimal.format(most, 0) + " " + unit);
        }
    }
}
