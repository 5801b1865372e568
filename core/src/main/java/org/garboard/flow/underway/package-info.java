/**
 * The water along a bottom under way: what attitude, streamlines, layer and shadows say together, at one speed.
 *
 * <p>Hull frame and units are those of {@link org.garboard.hull}. Under a planing bottom the water runs straight aft from
 * the stagnation line; along a floating hull it runs as past the double body. Where neither is known there is no answer.
 */
package org.garboard.flow.underway;
