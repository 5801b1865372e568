/**
 * Penalised splines side by side along the boat, and leave-one-out diagnostics: how far a reading stands from what
 * all others say of it, and how sure they are. Metres; fairness weights are precisions [1/m2].
 *
 * <p>The penalty is a prior on third derivatives, the readings' scatter is known, so that residuals left out are
 * close to standard normal if the fairness is right (Wahba, <i>Spline Models for Observational Data</i>, 1990,
 * from memory).
 */
package org.garboard.slips.fit;
