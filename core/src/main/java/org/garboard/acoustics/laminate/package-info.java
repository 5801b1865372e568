/**
 * Sound through plates: closed form for one plate at normal incidence, any number of layers with loss,
 * and one elastic plate, which carries shear, at any angle.
 *
 * <p>Losses oscillate with thickness: a thicker skin is not always the worse. So what is told of a hull is
 * the worst over the range of thickness that it may have.
 */
package org.garboard.acoustics.laminate;
