/**
 * The air-filled region behind a step: where the water that leaves its edge meets the bottom again.
 *
 * <p>Source: D. Savitsky, M. Morabito, Surface wave contours associated with the forebody wake of stepped planing
 * hulls, Marine Technology 47(1), 2010, pp. 1-16, as quoted elsewhere; its coefficients and range stand here from memory
 * and no published value was at hand to hold them to. What comes of it is advisory.
 */
package org.garboard.flow.steps;
