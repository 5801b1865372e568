/**
 * What features on the bottom do to the water behind them: shadows in plan, hull frame (see {@link org.garboard.hull}).
 *
 * <p>What is known of their width: turbulent wedges in a laminar layer spread at a mean half-angle of about 6 degrees
 * (F. Berger and E. White, arXiv 2010.05323, abstract), their outer edge at 10.6 (G. Schubauer and P. Klebanoff, NACA
 * TR 1289, 1956, from memory). Bottoms are turbulent already, so that both are upper bounds there. No source was
 * found for the bubbles behind strakes and fittings; who shows a shadow should say so.
 */
package org.garboard.flow.shadow;
