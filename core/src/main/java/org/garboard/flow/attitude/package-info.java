/**
 * How a real hull runs: the planing prism of {@link org.garboard.flow.planing} brought into agreement with her
 * bottom, and the stagnation line laid on it. Hull frame, see {@link org.garboard.hull}.
 */
package org.garboard.flow.attitude;
