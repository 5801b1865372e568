/**
 * Sound from the element to the sea bed: what a skin lets through, the beam, and what stands in its way.
 *
 * <p>SI and radians; frequencies in hertz, losses in decibels where a name says so. A loss is a positive
 * number. The hull frame is that of {@link org.garboard.hull}. The speed of sound in the water is
 * {@link org.garboard.flow.water.Water#soundSpeed()} or any other number that is passed in.
 */
package org.garboard.acoustics;
