/**
 * What a mount asks of the water that passes its place, at every speed of the boat and at every end of the band of load and
 * trim: solid water, the layer, wakes, cavitation, where the beam looks.
 *
 * <p>Hull frame, metres, metres a second, radians; see {@link org.garboard.hull}. An end at which no method holds is left out, with
 * the reason: a place that does not serve at an end that is known does not serve; one that serves at all that are known is NOT
 * KNOWN to serve.
 */
package org.garboard.mount.water;
