/**
 * How a real hull lies to the water at a speed: afloat as at rest, planing (the prism of
 * {@link org.garboard.flow.planing} brought into agreement with her bottom, the stagnation line laid on it), on steps, or
 * not known. {@link org.garboard.flow.attitude.CraftRunning} goes through a craft's speeds and the band of load and trim,
 * {@link org.garboard.flow.attitude.RunningHull} answers for one load. Hull frame, see {@link org.garboard.hull}.
 */
package org.garboard.flow.attitude;
