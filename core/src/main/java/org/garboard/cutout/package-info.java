/**
 * What is cut: the keel pocket's floor, walls and ramps, the curve in which they meet the skin,
 * and the flat development of that curve. Hull frame and metres, see {@link org.garboard.hull}.
 */
package org.garboard.cutout;
