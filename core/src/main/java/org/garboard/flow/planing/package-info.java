/**
 * A prismatic planing bottom at speed: trim, wetted lengths, drag, stagnation line and spray.
 *
 * <p>Source throughout: D. Savitsky, Hydrodynamic Design of Planing Hulls, Marine Technology 1(1),
 * October 1964, pp. 71-95; equation numbers are the paper's. Trim and deadrise stand in degrees inside
 * the paper's regressions, as it has them. Lengths forward of the transom along the keel, heights square to
 * the keel [m]. What the paper's tables get wrong, and is not followed here: lambda 3.29 at the balance of
 * Table 1 is a slip, two densities (1.94 in the lift, 2.00 in the friction), row 23 at 3 degrees .9964 for
 * .9936; a copy in circulation prints the angle of the stagnation line without its pi.
 */
package org.garboard.flow.planing;
