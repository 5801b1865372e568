/**
 * The boundary layer along a line of flow from where its run of water begins (stem, or stagnation line
 * of a planing bottom): thickness, displacement and momentum thickness, velocity at a height, friction.
 *
 * <p>Flat plate without pressure gradient. Two laws: {@link org.garboard.flow.layer.SeventhPower}, quick,
 * and {@link org.garboard.flow.layer.WallWake}, full, with laminar start and roughness. The 1/5-power law
 * is not used: at 10 to 500 million its momentum thickness is 2 to 22 % low against Schoenherr's friction line.
 */
package org.garboard.flow.layer;
