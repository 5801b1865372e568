/**
 * How she runs: water, attitude, boundary layer, cavitation, each in a package of its own.
 *
 * <p>Hull frame and units are those of {@link org.garboard.hull}; speeds in m/s inside, in knots where a
 * name says so. A method outside its range yields no number: results are sealed types whose other cases
 * say why.
 */
package org.garboard.flow;
