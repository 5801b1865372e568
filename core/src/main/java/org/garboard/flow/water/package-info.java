/**
 * Water as boats meet it, near the surface: density, viscosity, vapour pressure and speed of sound
 * from temperature and salinity.
 *
 * <p>SI; temperature in degrees Celsius (the formulas' own scales differ from ITS-90 by at most
 * 0.01 degrees in their range, less than is known of any harbour), salinity in grams of salt to a
 * kilogram of water (practical salinity is taken as equal to it). Each formula names its range.
 */
package org.garboard.flow.water;
